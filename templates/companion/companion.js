(function () {
  "use strict";
  var root = document.documentElement;
  var key = "companion " + root.getAttribute("data-memory");
  var named = function (id) { return document.getElementById(id); };
  var ticks = Array.prototype.slice.call(document.querySelectorAll("[data-tick]"));
  var steps = ticks.filter(function (tick) { return tick.hasAttribute("data-step"); });
  var size = named("choose-size");
  var units = named("choose-units");
  var large = named("choose-large");
  var theme = named("choose-theme");
  var display = named("open-display");
  var panel = named("display");
  var status = named("progress");
  var next = named("go-on");

  // A browser may keep nothing for files, or forbid it: then the page forgets, and works.
  function recall() {
    try {
      var kept = JSON.parse(window.localStorage.getItem(key));
      return kept && typeof kept === "object" ? kept : {};
    } catch (problem) {
      return {};
    }
  }

  function remember() {
    try {
      window.localStorage.setItem(key, JSON.stringify({
        size: size.value,
        units: units.value,
        large: large.checked,
        theme: theme.value,
        done: ticks.filter(function (tick) { return tick.checked; })
            .map(function (tick) { return tick.getAttribute("data-tick"); })
      }));
    } catch (problem) {
      return;
    }
  }

  function choose(select, value) {
    var known = Array.prototype.some.call(select.options, function (option) {
      return option.value === value;
    });
    if (known) {
      select.value = value;
    }
  }

  function mark(name, value) {
    if (value) {
      root.setAttribute(name, value);
    } else {
      root.removeAttribute(name);
    }
  }

  function show() {
    mark("data-size", size.value);
    mark("data-units", units.value);
    mark("data-type", large.checked ? "large" : "");
    mark("data-theme", theme.value === "device" ? "" : theme.value);
    ticks.forEach(function (tick) {
      var whole = tick.closest("article, li");
      whole.classList.toggle("done", tick.checked);
    });
    var done = steps.filter(function (tick) { return tick.checked; }).length;
    var open = steps.filter(function (tick) { return !tick.checked; });
    if (status) {
      status.textContent = JSON.parse(status.getAttribute("data-messages"))[done];
      next.hidden = done === 0 || open.length === 0;
      if (open.length > 0) {
        next.setAttribute("href", "#" + open[0].getAttribute("data-step"));
      }
    }
    var share = steps.length > 0 ? done / steps.length : 0;
    named("progress-line").style.transform = "scaleX(" + share + ")";
  }

  // Keeps what is being read in its place while the text around it grows or shrinks.
  function change() {
    var seen = Array.prototype.slice.call(document.querySelectorAll("main section, article"))
        .filter(function (part) { return part.getBoundingClientRect().top > 0; })[0];
    var before = seen ? seen.getBoundingClientRect().top : 0;
    show();
    if (seen && window.scrollY > 0) {
      window.scrollBy({ top: seen.getBoundingClientRect().top - before, behavior: "instant" });
    }
    remember();
  }

  function unfold(open) {
    panel.hidden = !open;
    display.setAttribute("aria-expanded", String(open));
  }

  var kept = recall();
  choose(size, kept.size);
  choose(units, kept.units);
  choose(theme, kept.theme);
  large.checked = kept.large === true;
  var done = Array.isArray(kept.done) ? kept.done : [];
  ticks.forEach(function (tick) {
    tick.checked = done.indexOf(tick.getAttribute("data-tick")) !== -1;
    tick.addEventListener("change", function () { show(); remember(); });
  });
  [size, units, large, theme].forEach(function (control) {
    control.addEventListener("change", change);
  });
  display.addEventListener("click", function () { unfold(panel.hidden); });
  document.addEventListener("keydown", function (event) {
    if (event.key === "Escape" && !panel.hidden) {
      unfold(false);
      display.focus();
    }
  });
  named("again").addEventListener("click", function (event) {
    if (window.confirm(event.currentTarget.getAttribute("data-ask"))) {
      ticks.forEach(function (tick) { tick.checked = false; });
      show();
      remember();
    }
  });
  root.classList.add("js");
  show();
}());
