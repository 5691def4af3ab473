package org.lapmark.document;

import freemarker.cache.ByteArrayTemplateLoader;
import freemarker.core.TemplateClassResolver;
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
import java.io.UncheckedIOException;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.lapmark.wording.Wording;

/** Fills the document templates. They can reach nothing but the values they are given. */
final class TemplateEngine {
  private final Configuration configuration = new Configuration(Configuration.VERSION_2_3_33);

  TemplateEngine(Templates templates) {
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
  }

  /**
   * Fills a template. In it, {@code say("key")} and {@code say("key", {"name": value})} give the
   * document's words.
   *
   * @param path the template
   * @param model values by name, made of maps, lists, strings, numbers and truth values
   * @param wording the words
   * @return the text
   * @throws IllegalStateException when the template fails
   */
  String fill(String path, Map<String, Object> model, Wording wording) {
    Map<String, Object> root = new LinkedHashMap<>(model);
    root.put("say", new Say(wording));
    StringWriter text = new StringWriter();
    try {
      configuration.getTemplate(path).process(root, text);
    } catch (TemplateException e) {
      throw new IllegalStateException("template " + path + ": " + e.getMessage(), e);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
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
