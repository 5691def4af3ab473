package org.lapmark.document;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assertions.fail;

import java.io.File;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.MessageDigest;
import java.util.ArrayList;
import java.util.Base64;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.TimeUnit;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Assumptions;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * The companion in a browser without a window. A script that plays the reader is added to a copy of
 * the page, and its hash to the copy's policy, so that all else stands as published. What it finds
 * it writes into the page's title, where it is read.
 */
class CompanionBrowserTest {
  private static final List<String> BROWSERS =
      List.of("chromium", "chromium-browser", "google-chrome");
  private static final long MOST_SECONDS = 120;

  /** What the reader's scripts share. */
  private static final String READER =
      """
      var root = document.documentElement;
      var found = [];
      function note(name, value) { found.push(name + '=' + value); }
      function choose(id, value) {
        var control = document.getElementById(id);
        if (control.type === 'checkbox') { control.checked = value; } else { control.value = value; }
        control.dispatchEvent(new Event('change'));
      }
      function seen(element) { return element.getClientRects().length > 0; }
      function text(id) {
        return document.getElementById(id).innerText.replace(/[\\s\\u00a0]+/g, ' ');
      }
      function tell() {
        var said = found.join(';');
        if (window.parent === window) { document.title = '[' + said + ']'; }
        else { window.parent.postMessage(said, '*'); }
      }
      function tooWide(where) {
        var inside = Array.prototype.filter.call(document.querySelectorAll('body *'), function (e) {
          return seen(e) && !e.closest('.scroll, .sheet, table, .unseen, .skip')
              && e.getBoundingClientRect().right > root.clientWidth + 0.5;
        }).map(function (e) { return e.tagName + '.' + e.className; });
        note(where, root.scrollWidth - root.clientWidth + ' ' + inside.slice(0, 3));
      }
      """;

  private static String page;

  @TempDir Path folder;

  @BeforeAll
  static void write() {
    if (browser().isEmpty()) {
      String reason = "none of " + String.join(", ", BROWSERS) + " is installed";
      if (System.getenv("CI") != null) {
        fail(reason);
      }
      Assumptions.abort(reason);
    }
    page = Companions.page(Companions.demo());
  }

  private static Optional<Path> browser() {
    for (String name : BROWSERS) {
      for (String place : System.getenv("PATH").split(Pattern.quote(File.pathSeparator))) {
        Path program = Path.of(place, name);
        if (Files.isExecutable(program)) {
          return Optional.of(program);
        }
      }
    }
    return Optional.empty();
  }

  /** A copy of the page with a reader's script. */
  private Path copy(String name, String reader) throws Exception {
    String script = READER + reader;
    byte[] digest =
        MessageDigest.getInstance("SHA-256").digest(script.getBytes(StandardCharsets.UTF_8));
    String allowed = "script-src 'sha256-" + Base64.getEncoder().encodeToString(digest) + "' ";
    String copy =
        page.replace("script-src ", allowed)
            .replace("</body>", "<script>" + script + "</script></body>");
    return Files.writeString(folder.resolve(name), copy);
  }

  /** What the reader's script finds in a page that is opened at a width. */
  private Map<String, String> open(Path file, int width, String... flags) throws Exception {
    List<String> command = new ArrayList<>();
    command.add(browser().orElseThrow().toString());
    command.addAll(
        List.of(
            "--headless",
            "--no-sandbox",
            "--disable-gpu",
            "--disable-quic",
            "--no-first-run",
            "--disable-background-networking",
            "--disable-component-update",
            "--disable-sync",
            "--user-data-dir=" + folder.resolve("profile"),
            "--window-size=" + width + ",740",
            "--virtual-time-budget=20000"));
    command.addAll(List.of(flags));
    command.addAll(List.of("--dump-dom", file.toUri().toString()));
    Path dump = folder.resolve("dump.html");
    Process process =
        new ProcessBuilder(command)
            .redirectOutput(dump.toFile())
            .redirectError(folder.resolve("log.txt").toFile())
            .start();
    try {
      assertTrue(process.waitFor(MOST_SECONDS, TimeUnit.SECONDS), "the browser doesn’t end");
    } finally {
      process.destroyForcibly();
    }
    Matcher title = Pattern.compile("<title>\\[(.*?)\\]</title>").matcher(Files.readString(dump));
    assertTrue(title.find(), "the reader’s script wasn’t run");
    Map<String, String> found = new LinkedHashMap<>();
    for (String entry : title.group(1).replace("&gt;", ">").split(";")) {
      int equals = entry.indexOf('=');
      found.put(entry.substring(0, equals), entry.substring(equals + 1));
    }
    return found;
  }

  /** A window isn't narrower than 500 pixels, a frame is. */
  private Path frame(Path file, int width) throws IOException {
    return Files.writeString(
        folder.resolve("frame-" + width + ".html"),
        "<!DOCTYPE html><html><head><title>-</title></head><body><script>"
            + "addEventListener('message', function (e) { document.title = '[' + e.data + ']'; });"
            + "</script><iframe width=\""
            + width
            + "\" height=\"740\" src=\""
            + file.getFileName()
            + "\"></iframe></body></html>");
  }

  @Test
  void neverScrollsSidewaysAndIsLargeEnoughForFingers() throws Exception {
    String reader =
        """
        note('width', innerWidth);
        tooWide('all');
        choose('choose-size', '2');
        tooWide('one');
        document.getElementById('open-display').click();
        document.querySelector('details').open = true;
        choose('choose-large', true);
        tooWide('large');
        var small = Array.prototype.filter.call(
            document.querySelectorAll('select, button, label.tick, label.choice, summary, nav a'),
            function (e) { return seen(e) && e.getBoundingClientRect().height < 43.5; });
        note('small', small.map(function (e) { return e.id || e.className || e.tagName; }));
        choose('choose-large', false);
        var letters = Array.prototype.filter.call(document.querySelectorAll('svg text'), seen)
            .map(function (e) { return e.getBoundingClientRect().height; });
        note('letters', Math.min.apply(null, letters));
        tell();
        """;
    Path copy = copy("page.html", reader);
    for (int width : new int[] {320, 360, 1280}) {
      Map<String, String> found =
          open(width < 500 ? frame(copy, width) : copy, Math.max(500, width));
      assertEquals(String.valueOf(width), found.get("width"));
      for (String state : List.of("all", "one", "large")) {
        assertEquals("0 ", found.get(state), width + ", " + state);
      }
      assertEquals("", found.get("small"), "too small for a fingertip at " + width);
      assertTrue(Double.parseDouble(found.get("letters")) > 9, width + ": " + found.get("letters"));
    }
  }

  @Test
  void showsWhatIsChosen() throws Exception {
    String reader =
        """
        note('list', /is S 60 mm \\(2 3\\/8 in\\), M 70 mm .*, L 80 mm .* from the raw edge/
            .test(text('step-straps')));
        note('notice', seen(document.getElementById('notice')));
        choose('choose-size', '2');
        note('one', /is 80 mm \\(3 1\\/8 in\\) from the raw edge/.test(text('step-straps')));
        note('notice-after', seen(document.getElementById('notice')));
        choose('choose-units', 'inches');
        note('inches', /is 3 1\\/8 in from the raw edge/.test(text('step-straps')));
        choose('choose-units', 'metric');
        note('metric', /is 80 mm from the raw edge/.test(text('step-straps')));
        note('columns', document.querySelectorAll('#finished thead th').length + ' '
            + Array.prototype.filter.call(
                document.querySelectorAll('#finished thead th'), seen).length);
        var figures = Array.prototype.map.call(document.querySelectorAll('figure'), function (f) {
          return Array.prototype.filter.call(f.querySelectorAll('.sheet'), seen).length;
        });
        note('sheets', Math.min.apply(null, figures) + ' ' + Math.max.apply(null, figures));
        choose('choose-size', '');
        figures = Array.prototype.map.call(document.querySelectorAll('figure'), function (f) {
          return Array.prototype.filter.call(f.querySelectorAll('.sheet'), seen).length;
        });
        note('sheets-all', Math.min.apply(null, figures) + ' ' + Math.max.apply(null, figures));
        note('requests', performance.getEntriesByType('resource').length);
        tell();
        """;
    Map<String, String> found = open(copy("page.html", reader), 1280);
    for (String shown : List.of("list", "one", "inches", "metric", "notice")) {
      assertEquals("true", found.get(shown), shown);
    }
    assertEquals("false", found.get("notice-after"));
    assertEquals("4 2", found.get("columns"));
    assertEquals("1 1", found.get("sheets"), "one drawing a figure");
    assertEquals("1 1", found.get("sheets-all"), "one drawing a figure");
    assertEquals("0", found.get("requests"));
  }

  @Test
  void remembersTicksAndChoicesUntilStartedAgain() throws Exception {
    String reader =
        """
        var ticks = Array.prototype.slice.call(document.querySelectorAll('[data-step]'));
        var turn = Number(sessionStorage.getItem('turn') || 0);
        if (turn === 0) {
          note('fresh', ticks.filter(function (t) { return t.checked; }).length);
          ticks[0].click(); ticks[2].click();
          document.querySelector('#piece-5 input').click();
          choose('choose-size', '1'); choose('choose-large', true);
          sessionStorage.setItem('turn', 1); sessionStorage.setItem('found', found.join(';'));
          location.reload();
        } else {
          found = sessionStorage.getItem('found').split(';');
          note('kept', ticks.map(function (t) { return t.checked ? 1 : 0; }).join('').slice(0, 4));
          note('piece', document.querySelector('#piece-5 input').checked);
          note('size', root.getAttribute('data-size') + root.getAttribute('data-type'));
          note('progress', text('progress'));
          note('next', document.getElementById('go-on').getAttribute('href'));
          note('struck', ticks[0].closest('article').className);
          window.confirm = function () { return false; };
          document.getElementById('again').click();
          note('asked', ticks[0].checked);
          window.confirm = function () { return true; };
          document.getElementById('again').click();
          note('again', document.querySelectorAll('[data-tick]:checked').length);
          note('progress-again', text('progress'));
          tell();
        }
        """;
    Map<String, String> found = open(copy("page.html", reader), 1280);
    assertEquals("0", found.get("fresh"));
    assertEquals("1010", found.get("kept"));
    assertEquals("true", found.get("piece"));
    assertEquals("1large", found.get("size"));
    assertEquals("2 of 14 steps done.", found.get("progress"));
    assertEquals("#step-fuse", found.get("next"));
    assertEquals("step done", found.get("struck"));
    assertEquals("true", found.get("asked"), "unticked without a yes");
    assertEquals("0", found.get("again"));
    assertEquals("No step is done yet.", found.get("progress-again"));
  }

  @Test
  void worksWhereNothingCanBeKept() throws Exception {
    String reader =
        """
        choose('choose-size', '1');
        note('shown', /is 70 mm/.test(text('step-straps')));
        tell();
        """;
    // The page's own script finds no storage: what stands before it takes it away.
    String forbid =
        "Object.defineProperty(window, 'localStorage', {get: function () {"
            + " throw new Error('forbidden'); }});";
    byte[] digest =
        MessageDigest.getInstance("SHA-256").digest(forbid.getBytes(StandardCharsets.UTF_8));
    String hash = "script-src 'sha256-" + Base64.getEncoder().encodeToString(digest) + "' ";
    Path copy = copy("page.html", reader);
    Files.writeString(
        copy,
        Files.readString(copy)
            .replace("script-src ", hash)
            .replace("<title>Towpath", "<script>" + forbid + "</script><title>Towpath"));
    assertEquals("true", open(copy, 1280).get("shown"));
  }

  @Test
  void isLegibleInLightAndDark() throws Exception {
    String reader =
        """
        function light(colour) {
          var parts = colour.match(/[0-9.]+/g).slice(0, 3).map(function (c) {
            var s = c / 255;
            return s > 0.04045 ? Math.pow((s + 0.055) / 1.055, 2.4) : s / 12.92;
          });
          return 0.2126 * parts[0] + 0.7152 * parts[1] + 0.0722 * parts[2];
        }
        function contrast(selector) {
          var a = light(getComputedStyle(document.querySelector(selector)).color);
          var b = light(getComputedStyle(document.body).backgroundColor);
          return (Math.max(a, b) + 0.05) / (Math.min(a, b) + 0.05);
        }
        function measure(name) {
          var least = Math.min.apply(null,
              ['main p', '.aside', 'nav a', '.caution', '.number', '.stage > h3'].map(contrast));
          note(name, light(getComputedStyle(document.body).backgroundColor) > 0.5
              ? 'light ' + (least >= 4.5) : 'dark ' + (least >= 4.5));
          note(name + '-sheet',
              light(getComputedStyle(document.querySelector('.sheet')).backgroundColor) > 0.5);
        }
        measure('device');
        choose('choose-theme', 'light'); measure('light');
        choose('choose-theme', 'dark'); measure('dark');
        choose('choose-theme', 'device');
        tell();
        """;
    Path copy = copy("page.html", reader);
    Map<String, String> found = open(copy, 1280);
    assertEquals("light true", found.get("device"));
    assertEquals("light true", found.get("light"));
    assertEquals("dark true", found.get("dark"));
    assertEquals("true", found.get("dark-sheet"), "drawings keep their paper");
    Map<String, String> dark = open(copy, 1280, "--blink-settings=preferredColorScheme=0");
    assertEquals("dark true", dark.get("device"));
    assertEquals("light true", dark.get("light"));
  }
}
