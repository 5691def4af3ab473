<#-- One family and a face for code, few sizes, black and one grey. All sizes follow the text's; large print has none
     below its own but in the running head. -->
<#if large>
<#assign type = {"text": 18, "small": 18, "tiny": 18, "title": 40, "heading": 27, "lower": 21, "headed": 14}>
<#else>
<#assign type = {"text": 12, "small": 10, "tiny": 9, "title": 34, "heading": 19, "lower": 13.5, "headed": 9}>
</#if>
* { margin: 0; padding: 0; }
html { word-wrap: break-word; font-family: "Source Sans Pro"; font-size: ${type.text}pt; line-height: 1.4; color: #000; }
object { display: inline-block; }
em { font-weight: 700; font-style: normal; }
a { color: #000; text-decoration: none; }

@page { margin: 25mm 20mm 22mm 20mm;
  @top-left { content: element(head); vertical-align: bottom; width: 100%; padding-bottom: 7mm; } }
@page cover { margin: 24mm 20mm 24mm 20mm; @top-left { content: none; } }

.head { position: running(head); font-size: ${type.headed}pt; line-height: 1.3; color: #000;
  border-bottom: 0.5pt solid #000; padding-bottom: 1.5mm; }
.head table { width: 100%; border-collapse: collapse; word-wrap: break-word; }
.head td { padding: 0; vertical-align: bottom; }
.head td.right { text-align: right; }

section { page-break-before: always; }
section.run-on { page-break-before: auto; padding-top: 9mm; }
section.cover { page: cover; page-break-before: auto; }

h2 { font-size: ${type.heading}pt; font-weight: 300; line-height: 1.2; margin-bottom: 3.5mm; page-break-after: avoid; }
h3 { font-size: ${type.lower}pt; font-weight: 700; line-height: 1.25; margin: 6mm 0 2mm 0; page-break-after: avoid; }
h4, h5, h6 { font-size: ${type.text}pt; font-weight: 700; line-height: 1.3; margin: 4mm 0 1mm 0; page-break-after: avoid; }
p { margin-bottom: 3mm; orphans: 2; widows: 2; }
p.lead { margin-bottom: 5mm; max-width: 156mm; }
p.note { font-size: ${type.small}pt; line-height: 1.4; margin-bottom: 2mm; max-width: 150mm; }
ul, ol { margin: 0 0 3mm 6mm; }
li { margin-bottom: 1mm; }
blockquote { margin: 0 0 3mm 8mm; }
hr { border: none; border-top: 0.35pt solid #888; margin: 5mm 0; }
sup { font-size: 75%; line-height: 1; vertical-align: super; }
code, kbd, samp, tt, pre { font-family: "Liberation Mono", "Source Sans Pro"; font-size: 88%; }
pre { line-height: 1.35; margin-bottom: 3mm; white-space: pre-wrap; }
ol.notes { font-size: ${type.small}pt; line-height: 1.35; margin-top: 2mm; }
a.reference[href^="#page-"]:after { content: target-counter(attr(href), page); }

/* Cover */
.cover .sheet { position: relative; }
.cover .studio { font-size: ${type.text}pt; font-weight: 700; letter-spacing: 0.4pt; margin-bottom: <#if large>16<#else>30</#if>mm; }
.cover h1 { font-size: ${type.title}pt; font-weight: 300; line-height: 1.1; margin-bottom: 4mm; }
.cover h1.long { font-size: ${type.title * 0.7}pt; }
.cover h1.longer { font-size: ${type.title / 2}pt; line-height: 1.2; }
.cover .size { font-size: ${type.heading - 2}pt; line-height: 1.2; margin-bottom: 8mm; }
.cover .choices { font-size: ${type.text}pt; margin-top: -4mm; margin-bottom: 8mm; }
.cover .summary { width: <#if large>160<#else>118</#if>mm; margin-bottom: <#if large>8<#else>14</#if>mm; }
.cover .edition { position: absolute; left: 0; bottom: 0; width: 100%; font-size: ${type.small}pt;
  line-height: 1.5; border-top: 0.5pt solid #000; padding-top: 2.5mm; }

/* Tables: thin rules, no boxes. Columns are as wide as their longest words, and words are whole; in a table that can't be,
   columns are alike and words are broken (the program gives it the class). */
table { border-collapse: collapse; word-wrap: normal; }
table.data, .author table { -fs-table-paginate: paginate; width: 100%; font-size: ${type.small}pt; line-height: 1.35; margin-bottom: 3mm; }
table.data th, .author th { text-align: left; font-weight: 700; vertical-align: bottom; }
table.data thead th, .author thead th { font-weight: 400; font-size: ${type.tiny}pt; color: #444; padding: 0 4mm 1.2mm 0;
  border-bottom: 0.75pt solid #000; }
table.data tbody th, table.data tbody td, .author td { padding: 1.2mm 4mm 1.2mm 0; vertical-align: top; }
.author td { border-bottom: 0.35pt solid #888; }
.author .right { text-align: right; } .author .center { text-align: center; }
table.data tr { page-break-inside: avoid; }
table.data tr.first th, table.data tr.first td { border-top: 0.35pt solid #888; }
table.data tr.opening th, table.data tr.opening td { border-top: none; }
table.data .number { text-align: right; }
table.data th.key { width: 8mm; }
table.data th.piece { width: 29mm; }
table.data th.material { width: 38mm; }
table.data th.count { width: 11mm; }
table.data th.reversed { width: 13mm; }
table.data .plain { font-weight: 400; }
table.data tr.marks td { padding-top: 0; }
.also { display: block; color: #444; font-weight: 400; }
table.measures { font-size: ${type.text}pt; }
table.shopping td { white-space: nowrap; width: 32mm; }
table.data thead th.size { font-weight: 700; color: #000; }
table.data.later { margin-top: 6mm; }
table.sizes td { width: auto; }
table.shopping td p { margin-bottom: 0; }
table.wide { table-layout: fixed; width: 100%; word-wrap: break-word; }
table.wide th, table.wide td { white-space: normal; }
.tools span { display: inline-block; width: <#if large>110<#else>64</#if>mm; vertical-align: top; margin-bottom: 0.6mm; }
table.facts { width: 100%; }
table.facts th { width: <#if large>52<#else>36</#if>mm; text-align: left; font-weight: 700; padding: 1.6mm 4mm 1.6mm 0; vertical-align: top; }
table.facts td { padding: 1.6mm 0; vertical-align: top; }
table.facts tr { page-break-inside: avoid; }
table.facts tr.next th, table.facts tr.next td { border-top: 0.35pt solid #888; }
table.facts p, table.facts li { margin-bottom: 0.6mm; }
table.facts ul { margin-bottom: 0; margin-left: 4.5mm; }
<#if !large>.column { display: inline-block; width: 80mm; vertical-align: top; }
.column.first { margin-right: 8mm; }
</#if>div.introduction { margin-top: 6mm; }
table.contents { width: 100%; }
table.contents th { text-align: left; font-weight: 400; padding: 0.7mm 0; }
table.contents td { text-align: right; padding: 0.7mm 0; white-space: nowrap; }
table.contents tr.next th, table.contents tr.next td { border-top: 0.35pt solid #888; }
table.contents a.page:after { content: target-counter(attr(href), page); }

/* Pictures */
.figure, .map { page-break-inside: avoid; margin: 3mm 0 4mm 0; line-height: 1; }
.figure p.caption, p.caption { font-size: ${type.small}pt; line-height: 1.35; margin: 1.2mm 0 0 0; max-width: 165mm; }
.cloth { page-break-inside: avoid; margin-bottom: 7mm; }
.cloth h3 { font-size: ${type.text}pt; margin: 0 0 0.5mm 0; }
.cloth p { font-size: ${type.small}pt; margin-bottom: 2mm; }

/* Steps */
.stage h3 { font-weight: 400; margin: 0 0 3mm 0; padding-bottom: 1mm; border-bottom: 0.35pt solid #888; }
.stage.later h3 { margin-top: 6mm; }
.step { margin-bottom: 3mm; }
.step h4 { font-size: ${type.lower}pt; line-height: 1.3; margin: 0 0 1.2mm 12mm; }
.step .no { display: inline-block; width: 12mm; margin-left: -12mm; }
.step p, .step ul, .step ol, .step blockquote, .step table, .step .tip, .step .warning { margin-left: 12mm; }
.step p { max-width: 152mm; }
.step ul, .step ol { margin-left: 18mm; }
.step .tip p, .step .warning p, .step .remember p, .step td p, .step li p, .step .figure p { margin-left: 0; }
.keep { page-break-inside: avoid; }
.step p.caution { border-left: 2.5pt solid #000; padding-left: 3mm; margin-bottom: 1.8mm; }
.tip, .warning, .remember { page-break-inside: avoid; padding: 0.4mm 0 0.4mm 3mm; margin-bottom: 3mm; border-left: 0.75pt solid #888; }
.warning, .remember { border-left: 2.5pt solid #000; }
.remember { margin: 5mm 0 0 12mm; }
.tip p, .warning p, .remember p { margin-bottom: 1mm; }
p.label { font-weight: 700; margin-bottom: 0; page-break-after: avoid; }
.half { display: inline-block; vertical-align: top; width: 80mm; }
.half.words { width: 86mm; }
.half.words p { max-width: 70mm; }
.half .figure { margin-top: 1mm; margin-bottom: 2mm; }
.film { page-break-inside: avoid; margin: 2mm 0 3mm 12mm; }
.film object { display: inline-block; vertical-align: middle; }
.step .film p { display: inline-block; vertical-align: middle; margin: 0 0 0 2mm; font-size: ${type.small}pt; width: 100mm; }

/* Cautions */
.cautions h3 { font-size: ${type.small}pt; margin: 3mm 0 0.3mm 0; }
.key { margin-top: 5mm; }
.cautions .hazard { page-break-inside: avoid; }
.cautions .hazard p { font-size: ${type.small}pt; line-height: 1.42; margin-bottom: 2mm; max-width: 156mm; }

/* Labels to cut out */
.labels .row { page-break-inside: avoid; padding-left: 1pt; }
.labels .label { display: inline-block; vertical-align: top; width: <#if large>164<#else>78.5</#if>mm; min-height: <#if large>56<#else>27</#if>mm; padding: 3mm; margin: -0.5pt 0 0 -0.5pt;
  border: 0.5pt dashed #000; page-break-inside: avoid; font-size: ${type.small}pt; line-height: 1.3; }
.labels .label p { margin-bottom: 0.6mm; }
.labels .label .name { font-size: ${type.lower}pt; font-weight: 700; margin-bottom: 1.4mm; }
.labels .label .origin { color: #444; font-size: ${type.tiny}pt; margin-top: 1.6mm; }

/* Seams walked */
table.walked { page-break-inside: avoid; }
table.walked td.verdict { white-space: nowrap; }
.walk p.note { margin-bottom: 0.8mm; }
.walk table.walked { margin-bottom: 2mm; }

.entry { page-break-inside: avoid; border-top: 0.35pt solid #888; padding: 2mm 0; }
.entry h3 { margin: 0 0 1mm 0; }
.entry p { margin-bottom: 1mm; }
.colophon p { font-size: ${type.small}pt; line-height: 1.4; max-width: 130mm; margin-bottom: 2mm; }
