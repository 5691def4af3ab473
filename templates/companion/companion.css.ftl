/* One column, the reader's own font, four sizes, one colour beside ink and paper. */
html { --paper: #fbfaf6; --leaf: #f1efe7; --ink: #1d2326; --quiet: #545c5f; --rule: #cfcbbd;
  --mark: #17595a; --on-mark: #ffffff; --care: #7a3b10; --sheet: #ffffff; color-scheme: light; }
@media (prefers-color-scheme: dark) {
  html:not([data-theme="light"]) { --paper: #15191a; --leaf: #1f2527; --ink: #e9e6de; --quiet: #aab0ae;
    --rule: #3d4547; --mark: #8accc4; --on-mark: #10211f; --care: #f0b48a; --sheet: #ffffff; color-scheme: dark; }
  html:not([data-theme="light"]) .sheet { filter: brightness(0.88); }
}
html[data-theme="dark"] { --paper: #15191a; --leaf: #1f2527; --ink: #e9e6de; --quiet: #aab0ae;
  --rule: #3d4547; --mark: #8accc4; --on-mark: #10211f; --care: #f0b48a; --sheet: #ffffff; color-scheme: dark; }
html[data-theme="dark"] .sheet { filter: brightness(0.88); }

* { box-sizing: border-box; }
html { font-size: 100%; scroll-padding-top: 5rem; -webkit-text-size-adjust: 100%; text-size-adjust: 100%; }
html[data-type="large"] { font-size: 137.5%; }
body { margin: 0; background: var(--paper); color: var(--ink); overflow-wrap: break-word;
  font-family: system-ui, -apple-system, "Segoe UI", Roboto, "Noto Sans", "Liberation Sans", sans-serif;
  font-size: 1.0625rem; line-height: 1.55; }
header, nav, main { max-width: 38rem; margin: 0 auto; padding: 0 1rem; }
h1, h2, h3, h4 { line-height: 1.2; margin: 0; font-weight: 650; text-wrap: balance; }
h1 { font-size: 2.25rem; font-weight: 300; letter-spacing: -0.01em; }
h2 { font-size: 1.5rem; margin-bottom: 0.75rem; }
h2.minor { margin-top: 2.5rem; }
h3, h4 { font-size: 1.125rem; }
p, ul, ol, dl, figure, blockquote { margin: 0 0 0.9rem; }
ul, ol { padding-left: 1.4rem; }
ul.plain { list-style: none; padding: 0; margin: 0; }
a { color: var(--mark); text-underline-offset: 0.18em; }
:focus-visible { outline: 3px solid var(--mark); outline-offset: 2px; }
.aside, .what, figcaption { color: var(--quiet); font-size: 0.9375rem; line-height: 1.45; }
.unseen { position: absolute; width: 1px; height: 1px; overflow: hidden; clip-path: inset(50%); white-space: nowrap; }
.skip { position: absolute; left: -100vw; }
.skip:focus { left: 0; top: 0; z-index: 3; background: var(--mark); color: var(--on-mark); padding: 0.75rem 1rem; }
.tag { font-weight: 650; }

/* Controls: none is lower than a fingertip. */
select, button, .button, .choice, .tick { min-height: 2.75rem; font: inherit; color: inherit; }
select, button, .button { background: var(--paper); border: 1px solid var(--quiet); border-radius: 0.4rem; padding: 0 0.6rem; }
.bar select { padding: 0 0.3rem; }
.button { display: inline-flex; align-items: center; text-decoration: none; }
button, select, label.tick, label.choice { cursor: pointer; }
input[type="checkbox"] { width: 1.4rem; height: 1.4rem; margin: 0; accent-color: var(--mark); flex: none; }

html:not(.js) .bar, html:not(.js) .notice, html:not(.js) .progress { display: none; }
.bar { position: sticky; top: 0; z-index: 2; background: var(--paper); border-bottom: 1px solid var(--rule); }
.bar .row { max-width: 38rem; margin: 0 auto; padding: 0.4rem 1rem; display: flex; flex-wrap: wrap; gap: 0.5rem; }
.bar .row select { flex: 1 1 5.5rem; min-width: 0; font-size: 0.9375rem; }
.bar .row button { flex: 0 1 auto; font-size: 0.9375rem; }
#display { max-width: 38rem; margin: 0 auto; padding: 0 1rem 0.5rem; }
#display:not([hidden]) { display: flex; flex-wrap: wrap; gap: 0.25rem 1.5rem; align-items: center; }
#display p { flex: 1 0 100%; margin: 0; color: var(--quiet); font-size: 0.9375rem; }
.choice { display: inline-flex; flex-wrap: wrap; align-items: center; gap: 0.25rem 0.6rem; max-width: 100%; }
.choice select { max-width: 100%; }
.line { height: 3px; background: var(--leaf); }
#progress-line { height: 3px; width: 100%; background: var(--mark); transform-origin: left; }

header { padding-top: 2.5rem; }
.kind { font-weight: 650; margin-bottom: 1.75rem; }
h1 { margin-bottom: 0.75rem; }
.summary { font-size: 1.25rem; line-height: 1.45; }
.notice { border-left: 4px solid var(--mark); padding: 0.5rem 0 0.5rem 0.9rem; }
html[data-size] .notice { display: none; }
.on-paper { display: none; }
nav { margin-top: 2.5rem; }
nav h2 { font-size: 1.125rem; margin-bottom: 0.25rem; }
nav ul { list-style: none; padding: 0; margin: 0; }
nav ul ul { padding-left: 1.25rem; }
nav a { display: block; padding: 0.55rem 0; text-decoration: none; border-bottom: 1px solid var(--rule); }
main > section { padding-top: 3.5rem; }

dl > div { padding: 0.5rem 0; border-top: 1px solid var(--rule); }
dt { font-weight: 650; }
dd { margin: 0; }
@media (min-width: 34em) {
  dl > div { display: grid; grid-template-columns: 11rem 1fr; gap: 1rem; }
}
.scroll { overflow-x: auto; margin-bottom: 0.9rem; }
table { border-collapse: collapse; font-variant-numeric: tabular-nums; }
.grid { width: 100%; }
.body table { display: block; overflow-x: auto; margin-bottom: 0.9rem; }
th, td { text-align: left; vertical-align: top; padding: 0.45rem 1rem 0.45rem 0; }
thead th { color: var(--quiet); font-weight: 400; font-size: 0.9375rem; border-bottom: 2px solid var(--ink); vertical-align: bottom; }
tbody th { font-weight: 400; }
tbody th, tbody td { border-bottom: 1px solid var(--rule); }
.grid td { min-width: 5.5rem; }
td.right, th.right { text-align: right; }
td.center, th.center { text-align: center; }
.thing { margin-bottom: 1.75rem; }
.thing h3 { margin-bottom: 0.4rem; }
.thing h3::first-letter, .plain li::first-letter { text-transform: uppercase; }
#cautions h3 { margin: 1.4rem 0 0.25rem; }
.thing h3, .pieces h3 { text-wrap: pretty; }
.thing dl { margin-bottom: 0.5rem; }
.thing .aside { margin-bottom: 0.3rem; }

.number { color: var(--mark); font-variant-numeric: tabular-nums; }
.pieces { list-style: none; padding: 0; }
.pieces > li { display: flex; gap: 0.5rem; border-top: 1px solid var(--rule); padding: 0.5rem 0 0.7rem; scroll-margin-top: 5rem; }
.pieces .tick { flex: none; width: 2.75rem; display: inline-flex; align-items: center; align-self: flex-start; }
.pieces h3 { padding: 0.7rem 0 0.2rem; }
.pieces .aside { margin: 0.2rem 0 0; }
.pieces li.done h3 { text-decoration: line-through; text-decoration-thickness: 1px; }

.stage { margin-top: 2.5rem; }
.stage > h3 { color: var(--quiet); font-weight: 400; font-size: 1.125rem; }
.step { border-top: 2px solid var(--ink); margin-top: 1rem; padding: 1rem 0 1.25rem; }
.step h4 { font-size: 1.25rem; margin-bottom: 0.75rem; display: flex; gap: 0.75rem; align-items: baseline; }
.step h4 .number { flex: none; min-width: 1.6rem; }
.step .tick { display: inline-flex; align-items: center; gap: 0.75rem; padding: 0 1rem 0 0.75rem; background: var(--leaf);
  border-radius: 0.4rem; font-weight: 650; min-width: 8rem; }
.step.done { border-top-color: var(--rule); }
.step.done h4 { font-weight: 400; }
.step.done .body, .step.done .caution { color: var(--quiet); }
.caution { color: var(--care); }
.tip, .warning { border-left: 4px solid var(--rule); padding: 0.1rem 0 0.1rem 0.9rem; margin: 0 0 0.9rem; }
.warning { border-left-color: var(--care); }
.tip > :last-child, .warning > :last-child { margin-bottom: 0; }
.label { font-weight: 650; margin-bottom: 0.1rem; }
.warning .label { color: var(--care); }
blockquote { padding-left: 0.9rem; border-left: 4px solid var(--rule); }
pre, code { white-space: pre-wrap; font-size: 0.9375em; }
.notes { font-size: 0.9375rem; color: var(--quiet); }
.value { font-variant-numeric: tabular-nums; }
.who { font-weight: 400; color: var(--quiet); }
b.who { font-weight: 650; }

figure { margin: 1.25rem 0 1.5rem; }
.sheet { background: #ffffff; border-radius: 0.3rem; padding: 0.5rem; overflow-x: auto; }
.sheet svg { display: block; width: 100%; max-width: 80mm; height: auto; margin: 0 auto; font-family: inherit; }
.sheet.wide svg { max-width: none; }
.sheet.narrow { display: none; }
figcaption { padding-top: 0.45rem; }
.drawn { display: block; }
html[data-size] .drawn { display: none; }
.key summary { min-height: 2.75rem; padding: 0.6rem 0; cursor: pointer; color: var(--mark); }
.sheet.picture svg { max-width: 165mm; }
.film { display: flex; gap: 1rem; align-items: center; margin: 1rem 0; }
.film .sheet { flex: none; padding: 0; }
.film .sheet svg { width: 22mm; }

/* On a phone a wide figure gives way to the one drawn narrow, or else scrolls. */
@media (max-width: 40em) {
  .sheet.narrow { display: block; }
  .sheet.swapped { display: none; }
  .sheet.wide:not(.swapped) svg { width: 34rem; }
}

/* What is chosen. */
html:not([data-size]) .sheet[data-for]:not(.typical) { display: none; }
html[data-size] .who { display: none; }
html[data-units="both"] [data-in]:not([data-in="both"]),
html[data-units="metric"] [data-in]:not([data-in="metric"]),
html[data-units="inches"] [data-in]:not([data-in="inches"]) { display: none; }
<#list sizes as size>
html[data-size="${size?index}"] [data-for]:not([data-for="${size?index}"]) { display: none; }
</#list>

@media print {
  html, html[data-theme] { --paper: #ffffff; --leaf: #ffffff; --ink: #000000; --quiet: #333333; --rule: #999999;
    --mark: #000000; --care: #000000; color-scheme: light; font-size: 11pt; }
  html[data-type="large"] { font-size: 15pt; }
  html .sheet { filter: none; padding: 0; }
  .bar, nav, .skip, .notice, .progress, .button, .key { display: none; }
  .on-paper { display: block; }
  html:not([data-size]) .on-paper:not([data-for="all"]) { display: none; }
  header, main { max-width: none; padding: 0; }
  main > section { padding-top: 1.5rem; }
  h2, h3, h4 { break-after: avoid; }
  figure, .thing, .pieces > li, tr, dl > div { break-inside: avoid; }
  .step .tick { padding-left: 0; }
  .step.done { border-top-color: #000000; }
  .step.done h4 { font-weight: 650; }
  .step.done .body, .step.done .caution { color: inherit; }
}
@media (prefers-reduced-motion: no-preference) {
  html { scroll-behavior: smooth; }
  #progress-line { transition: transform 0.2s; }
}
