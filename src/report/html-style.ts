import { createHash } from 'node:crypto'

/** The one style sheet of the page. Colours keep a contrast of 4.5:1 in both schemes (WCAG 2.2, 1.4.3). */
export const REPORT_STYLE = `
:root{color-scheme:light dark;--paper:#fff;--ink:#1b2430;--quiet:#4a5563;--rule:#c3cad3;--wash:#f4f6f8;--fail:#a3201a;--open:#1d4f91;--pass:#1b6b3a;--link:#1d4f91}
@media (prefers-color-scheme:dark){:root{--paper:#12161b;--ink:#e7ebf0;--quiet:#b4bdc8;--rule:#46505c;--wash:#1b2129;--fail:#ff9c94;--open:#9cc4ff;--pass:#86d7a1;--link:#9cc4ff}}
@media (prefers-contrast:more){:root{--quiet:var(--ink);--rule:var(--ink)}}
*{box-sizing:border-box}
body{margin:0;background:var(--paper);color:var(--ink);font:1rem/1.5 system-ui,"Segoe UI","Helvetica Neue",Arial,"DejaVu Sans",sans-serif}
header,main,footer{max-width:60rem;margin:0 auto;padding:0 1.25rem}
header{padding-top:2rem}
footer{padding-bottom:3rem;color:var(--quiet)}
h1{font-size:2rem;line-height:1.2;margin:.25rem 0 1rem;overflow-wrap:anywhere}
h2{font-size:1.35rem;margin:2.75rem 0 .75rem;padding-bottom:.3rem;border-bottom:2px solid var(--rule)}
h3{font-size:1.1rem;margin:0 0 .6rem}
p,li,dd,td,th{overflow-wrap:anywhere}
td,th{min-width:7rem}
#rest td:nth-child(2){width:55%}#rest tr>:first-child{width:25%}
a{color:var(--link)}
a:focus-visible,summary:focus-visible,.scroll:focus-visible{outline:3px solid var(--link);outline-offset:2px}
.skip{position:absolute;left:-100rem}
.skip:focus{left:1rem;top:1rem;background:var(--paper);padding:.5rem 1rem;z-index:1}
.hidden{position:absolute;width:1px;height:1px;overflow:hidden;clip-path:inset(50%);white-space:nowrap}
.kind{margin:0;color:var(--quiet)}
.verdict{font-size:1.25rem;border-left:.5rem solid var(--quiet);padding:.75rem 1rem;background:var(--wash);margin:0 0 1.25rem}
.verdict strong{display:block;font-size:1.6rem}
.fail{color:var(--fail)}.undetermined{color:var(--open)}.pass{color:var(--pass)}.not-applicable{color:var(--quiet)}
.verdict.fail,.finding{border-color:var(--fail)}.verdict.undetermined{border-color:var(--open)}.verdict.pass{border-color:var(--pass)}
.verdict p{margin:0;color:var(--ink)}
.finding{border:1px solid var(--rule);border-left:.5rem solid var(--fail);padding:1rem 1.25rem;margin:0 0 1rem;break-inside:avoid}
.finding.advice{border-left-color:var(--quiet)}
.number{display:inline-block;min-width:1.8em;padding:0 .4em;border-radius:1em;text-align:center;background:var(--fail);color:var(--paper);margin-right:.35em}
.number.open{background:none;color:var(--open);box-shadow:inset 0 0 0 1px var(--open)}
dl{display:grid;grid-template-columns:minmax(6rem,9rem) 1fr;gap:.35rem 1rem;margin:0}
dt{color:var(--quiet)}dd{margin:0}
dd.change{font-weight:600}
.waiver{color:var(--ink)}span.waiver,dd.waiver{display:block;border-left:.25rem solid var(--quiet);padding-left:.5rem}dt.waiver{font-weight:600}
dd ul{margin:0;padding-left:1.1rem}
figure{margin:0;border:1px solid var(--rule);background:#fff;padding:.5rem}
figure svg{display:block;max-width:100%;height:auto;margin:0 auto}
figcaption{color:#4a5563;padding:.5rem}
.scroll{position:relative;overflow-x:auto}
table{border-collapse:collapse;width:100%;margin:0 0 1rem}
caption{text-align:left;color:var(--quiet);padding:.25rem 0 .5rem}
th,td{border:1px solid var(--rule);padding:.45rem .6rem;text-align:left;vertical-align:top}
thead th{background:var(--wash)}
tbody th{font-weight:600}
tr{break-inside:avoid}
#undecided td:nth-child(2){min-width:16rem}
.blank{display:block;min-width:7rem;height:1.6em;border-bottom:1px solid var(--ink)}
.cells{font-size:1.6rem;line-height:1.3;letter-spacing:.05em}
code{font-size:.9em}
summary{cursor:pointer;font-weight:600;padding:.35rem 0}
@media (max-width:40rem){dl{grid-template-columns:1fr}dt{margin-top:.4rem}}
@media print{:root{color-scheme:light;--paper:#fff;--ink:#000;--quiet:#333;--rule:#888;--wash:#fff;--fail:#8c1812;--open:#163f75;--pass:#14532d;--link:#000}
body{font-size:8.5pt;line-height:1.3}.skip{display:none}header,main,footer{max-width:none;padding:0}h1{font-size:15pt;margin:0}h2{font-size:11.5pt;margin:.7rem 0 .3rem;padding:0 0 .1rem;break-after:avoid}h3{font-size:10pt;margin:0 0 .2rem;break-after:avoid}
p,ul{margin:.3rem 0}ul{padding-left:1.1rem}.verdict{font-size:10pt;padding:.3rem .7rem;margin:0 0 .4rem}.verdict strong{font-size:12pt}.finding{padding:.4rem .7rem;margin:0 0 .5rem}dl{gap:.1rem .7rem;grid-template-columns:7.5rem 1fr}
#sources td:nth-child(2){width:50%}table{font-size:7.5pt;line-height:1.25;margin:0 0 .5rem}th,td{padding:.12rem .35rem;min-width:5.5rem}caption{display:none}#reading caption{display:table-caption;padding:.1rem 0}.blank{min-width:5rem}.cells{font-size:1.3rem}
summary{list-style:none;padding:.2rem 0;break-after:avoid}summary::-webkit-details-marker{display:none}details::details-content{content-visibility:visible;display:block}.scroll{overflow:visible}
figure{padding:0;break-inside:avoid}figure svg{max-height:85mm}figcaption{padding:.1rem .4rem}
.number{print-color-adjust:exact;-webkit-print-color-adjust:exact}}
@page{margin:12mm}
`

/** The source expression that a content security policy needs to allow exactly this style, without its quotes. */
export const REPORT_STYLE_HASH = `sha256-${createHash('sha256').update(REPORT_STYLE).digest('base64')}`
