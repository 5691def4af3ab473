package org.lapmark.publish.product;

import java.util.ArrayList;
import java.util.List;
import org.lapmark.document.manual.Look;
import org.lapmark.document.svg.CutFile;
import org.lapmark.grade.EvaluatedPattern;
import org.lapmark.grade.piece.Piece;
import org.lapmark.publish.output.FileNames;
import org.lapmark.publish.output.Manifest;
import org.lapmark.publish.output.Purpose;
import org.lapmark.publish.request.Request;

/**
 * Each piece for machines that cut. They need no paper: a run for some papers leaves their files as
 * they are.
 */
final class CutFiles extends Product {
  CutFiles() {
    super("cut-file");
  }

  @Override
  public boolean isWanted(Request request) {
    return super.isWanted(request) && request.papers().isEmpty();
  }

  @Override
  public List<Job> jobs(Run run) {
    return run.graded().stream().map(pattern -> job(run, pattern)).toList();
  }

  private Job job(Run run, EvaluatedPattern pattern) {
    Purpose purpose = run.purpose(pattern);
    return Job.of(
        bench -> {
          List<Manifest.Entry> files = new ArrayList<>();
          for (Piece piece : pattern.pieces()) {
            if (!piece.cuts().isEmpty()) {
              files.addAll(
                  bench.file(
                      this,
                      purpose,
                      run.names()
                          .inFolder(
                              purpose, FileNames.CUT_FOLDER, piece.number(), piece.name(), ".svg"),
                      new CutFile(pattern, piece, bench.desk().planner(Look.STANDARD))));
            }
          }
          return files;
        });
  }

  /** A piece that could be graded can be drawn. */
  @Override
  public List<Job> rehearsal(Run run) {
    return List.of();
  }
}
