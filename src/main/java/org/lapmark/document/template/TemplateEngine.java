package org.lapmark.document.template;

import freemarker.cache.ByteArrayTemplateLoader;
import freemarker.cache.StrongCacheStorage;
import freemarker.core.TemplateClassResolver;
import freemarker.core._CoreAPI;
import freemarker.template.Configuration;
import freemarker.template.SimpleObjectWrapper;
import freemarker.template.TemplateException;
import freemarker.template.TemplateExceptionHandler;
import freemarker.template.TemplateHashModelEx2;
import freemarker.template.TemplateMethodModelEx;
import freemarker.template.TemplateModel;
import freemarker.template.TemplateModelException;
import freemarker.template.TemplateNumberModel;
import freemarker.template.TemplateScalarModel;
import java.io.IOException;
import java.io.StringWriter;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import org.lapmark.finding.Finding;
import org.lapmark.wording.Wording;

/**
 * Fills the document templates. They can reach nothing but the values they are given, and if they
 * aren't the program's own, they come to an end.
 */
public final class TemplateEngine {
  private final Configuration configuration = new Configuration(Configuration.VERSION_2_3_33);
  private final Templates templates;

  public TemplateEngine(Templates templates) {
    this.templates = templates;
    ByteArrayTemplateLoader loader = new ByteArrayTemplateLoader();
    templates.files().forEach(loader::putTemplate);
    configuration.setTemplateLoader(loader);
    configuration.setDefaultEncoding("UTF-8");
    configuration.setLocale(Locale.ROOT);
    configuration.setTimeZone(java.util.TimeZone.getTimeZone("UTC"));
    configuration.setNumberFormat("computer");
    configuration.setLocalizedLookup(false);
    configuration.setRecognizeStandardFileExtensions(true);
    configuration.setNewBuiltinClassResolver(TemplateClassResolver.ALLOWS_NOTHING_RESOLVER);
    configuration.setAPIBuiltinEnabled(false);
    configuration.setObjectWrapper(new SimpleObjectWrapper(Configuration.VERSION_2_3_33));
    configuration.setTemplateExceptionHandler(TemplateExceptionHandler.RETHROW_HANDLER);
    configuration.setLogTemplateExceptions(false);
    configuration.setWrapUncheckedExceptions(true);
    // Checks that are put into a template stay there.
    configuration.setCacheStorage(new StrongCacheStorage());
    configuration.setTemplateUpdateDelayMilliseconds(Long.MAX_VALUE);
    if (!templates.areOwn()) {
      checked();
    }
  }

  /** Parses all templates, and has them ask at each turn whether they may go on. */
  private void checked() {
    for (String path : templates.files().keySet()) {
      if (path.endsWith(".ftl") || path.endsWith(".ftlh")) {
        try {
          _CoreAPI.addThreadInterruptedChecks(configuration.getTemplate(path));
        } catch (IOException e) {
          // Whoever asks for it is told, and the check of the templates tells everybody.
          continue;
        }
      }
    }
  }

  /** What is wrong with the form of a template, if anything. */
  Optional<Finding> faultIn(String path) {
    try {
      configuration.getTemplate(path);
      return Optional.empty();
    } catch (IOException e) {
      return Optional.of(TemplateFaults.filling(e, path, templates));
    }
  }

  /**
   * Fills a template. In it, {@code say("key")} and {@code say("key", {"name": value})} give the
   * document's words.
   *
   * @param path the template
   * @param model values by name, made of maps, lists, strings, numbers and truth values
   * @param wording the words
   * @return the text
   * @throws TemplateFault when the template fails
   */
  public String fill(String path, Map<String, Object> model, Wording wording) {
    Map<String, Object> root = new LinkedHashMap<>(model);
    root.put("say", new Say(wording));
    if (!templates.areOwn()) {
      return new BoundedFilling(templates, path)
          .run(text -> configuration.getTemplate(path).process(root, text));
    }
    StringWriter text = new StringWriter();
    try {
      configuration.getTemplate(path).process(root, text);
    } catch (TemplateException | IOException e) {
      throw new TemplateFault(TemplateFaults.filling(e, path, templates));
    }
    return text.toString();
  }

  private record Say(Wording wording) implements TemplateMethodModelEx {
    @Override
    public Object exec(@SuppressWarnings("rawtypes") List arguments) throws TemplateModelException {
      Map<String, Object> values = new LinkedHashMap<>();
      if (arguments.size() > 1) {
        TemplateHashModelEx2 named = (TemplateHashModelEx2) arguments.get(1);
        TemplateHashModelEx2.KeyValuePairIterator pairs = named.keyValuePairIterator();
        while (pairs.hasNext()) {
          TemplateHashModelEx2.KeyValuePair pair = pairs.next();
          values.put(((TemplateScalarModel) pair.getKey()).getAsString(), value(pair.getValue()));
        }
      }
      return wording.text(((TemplateScalarModel) arguments.get(0)).getAsString(), values);
    }

    private static Object value(TemplateModel model) throws TemplateModelException {
      return model instanceof TemplateNumberModel number
          ? number.getAsNumber()
          : ((TemplateScalarModel) model).getAsString();
    }
  }
}
