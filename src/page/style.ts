import { REPORT_STYLE } from '../report/html-style.js'

/** The one style sheet of the page: that of a report, and what forms, lists and the way between pages need besides. */
export const PAGE_STYLE = `${REPORT_STYLE}
main{max-width:72rem;padding-bottom:2rem}
main>h1{margin-top:1.5rem}
.bar{max-width:none;padding:0;background:var(--wash);border-bottom:1px solid var(--rule)}
.bar>div,.foot>div{max-width:72rem;margin:0 auto;padding:.5rem 1.25rem;display:flex;flex-wrap:wrap;gap:.25rem 1.5rem;align-items:center}
.foot{max-width:none;padding:0;border-top:1px solid var(--rule);margin-top:2rem}.foot>div{padding-bottom:2rem}.foot p{flex-basis:100%;margin:.75rem 0 .25rem}
.brand{display:inline-flex;gap:.5rem;align-items:center;font-weight:700;font-size:1.15rem;color:var(--ink);text-decoration:none;margin-right:auto;padding:.35rem 0}
.brand svg{width:1.7rem;height:1.35rem;fill:currentColor}
.bar nav{display:flex;flex-wrap:wrap;gap:0 1.25rem}.bar nav a,.foot a{padding:.35rem 0}
.bar nav a[aria-current]{color:var(--ink);font-weight:600;text-decoration:none;box-shadow:0 3px 0 var(--link)}
.bar form{display:flex;flex-wrap:wrap;gap:.5rem;align-items:center}
.crumbs{margin:1rem 0 0;font-size:.95rem}.crumbs ol{list-style:none;display:flex;flex-wrap:wrap;gap:.15rem .5rem;margin:0;padding:0}.crumbs li:not(:last-child)::after{content:"›";margin-left:.5rem;color:var(--quiet)}
.lead{max-width:44rem;font-size:1.1rem}
main>p,main>section>p{max-width:48rem}
:focus-visible{outline:3px solid var(--link);outline-offset:2px}
main:focus,.errors:focus{outline:none}
.errors:focus-visible{outline:3px solid var(--fail)}
label,legend{font-weight:600}
label.choice{font-weight:400;display:flex;gap:.6rem;align-items:flex-start;padding:.3rem 0;overflow-wrap:anywhere}
label.choice input{width:1.35rem;height:1.35rem;margin:.1rem 0 0;flex:none;accent-color:var(--link)}
.field{margin:0 0 1.25rem;max-width:34rem}
.hint{display:block;color:var(--quiet);font-weight:400;margin:.1rem 0 .35rem}
.wrong{display:block;color:var(--fail);font-weight:600;margin:.1rem 0 .35rem}
.field.bad{border-left:.3rem solid var(--fail);padding-left:.9rem}
input:not([type=checkbox]):not([type=radio]),select,textarea{font:inherit;color:var(--ink);background:var(--paper);border:1px solid var(--quiet);border-radius:.2rem;padding:.45rem .55rem;width:100%;min-height:2.75rem;max-width:100%}
input[aria-invalid=true]{border:2px solid var(--fail)}
textarea{min-height:5rem}
input[type=file]{border-style:dashed;padding:.9rem}
input.short{max-width:9rem}
fieldset{border:1px solid var(--rule);border-radius:.2rem;margin:0 0 1.25rem;padding:.6rem 1rem 1rem;min-width:0}
fieldset.plain{border:0;padding:0}
fieldset.plain>legend{font-size:1.1rem;padding:0}
fieldset fieldset legend{font-weight:600}
button,.button{font:inherit;font-weight:600;display:inline-block;min-height:2.75rem;padding:.45rem 1.1rem;border:2px solid var(--link);border-radius:.2rem;background:var(--link);color:var(--paper);cursor:pointer;text-decoration:none}
button:hover,.button:hover{text-decoration:underline}
button.quiet,.button.quiet{background:none;color:var(--link)}
button.grave{background:var(--fail);border-color:var(--fail)}
.bar button{min-height:2rem;padding:.15rem .75rem}
.actions{display:flex;flex-wrap:wrap;gap:.75rem;align-items:center;margin:1rem 0}
.errors,.notice{border:1px solid var(--rule);border-left:.5rem solid var(--fail);padding:.75rem 1.25rem;margin:1.25rem 0;background:var(--wash)}
.errors h2{border:0;margin:0 0 .4rem;padding:0;font-size:1.2rem}.errors ul{margin:0;padding-left:1.2rem}
.notice{border-left-color:var(--link)}.notice p{margin:.2rem 0}
.drop{border:2px dashed transparent;border-radius:.3rem;padding:.5rem;margin:-.5rem -.5rem .75rem}
.drop.over{border-color:var(--link);background:var(--wash)}
.columns{display:grid;grid-template-columns:repeat(auto-fill,minmax(min(100%,22rem),1fr));gap:0 1.5rem}
.totals{display:flex;flex-wrap:wrap;gap:.75rem;list-style:none;padding:0;margin:0 0 1rem}
.totals li{border:1px solid var(--rule);border-radius:.2rem;padding:.5rem .9rem;min-width:7.5rem}
.totals strong{display:block;font-size:1.5rem;line-height:1.2}
progress{width:100%;max-width:34rem;height:1.1rem;accent-color:var(--link);display:block;margin:.4rem 0}
.filter{display:flex;flex-wrap:wrap;gap:.5rem 1rem;align-items:flex-end;margin:0 0 1rem}.filter .field{margin:0;flex:1 1 12rem;max-width:20rem}
.pages{display:flex;flex-wrap:wrap;gap:.5rem 1rem;align-items:center;margin:.5rem 0 1rem}.pages p{margin:0}
.evidence{columns:22rem 2;column-gap:2.5rem;max-width:60rem;padding-left:1.1rem}.evidence li{padding:.25rem 0;break-inside:avoid}
.facts{margin:1rem 0 1.5rem;max-width:48rem}
table.list td,table.list th{min-width:4.5rem}
th[scope=col],td>.fail,td>.undetermined,td>.pass,td>.not-applicable{overflow-wrap:normal;white-space:nowrap}
table.list a{display:inline-block;min-height:1.5rem}
table.history td:nth-child(2){min-width:8rem}table.history td:nth-child(4){min-width:16rem}
.beside{display:grid;grid-template-columns:minmax(0,1fr);gap:0 2rem}
.below{margin-top:.75rem;border-top:1px solid var(--rule)}
details details{margin-left:1rem}
details>.inside{padding:.5rem 0 .25rem}
.reading-row{display:grid;grid-template-columns:minmax(0,1fr) 8rem 8rem;gap:.25rem .75rem;align-items:end}.reading-row .field{max-width:none;margin-bottom:.5rem}
.finding.open{border-left-color:var(--open);border-left-style:double}
.finding:target,.finding.lit{background:var(--wash);box-shadow:0 0 0 3px var(--link)}
svg .place{cursor:pointer;outline:none}
svg .place rect{fill:#ffb000;fill-opacity:0;stroke:#ffb000;stroke-opacity:0;filter:drop-shadow(0 0 1.5px #000);vector-effect:non-scaling-stroke;stroke-width:4px;pointer-events:all}
svg .place:hover rect,svg .place:focus rect,svg .place.lit rect,svg .place:target rect{fill-opacity:.22;stroke-opacity:1}
figure .caption{color:#1b2430}
@media (min-width:64rem){.beside{grid-template-columns:minmax(0,6fr) minmax(0,7fr)}.beside>.drawing{position:sticky;top:1rem;align-self:start;max-height:calc(100vh - 2rem);overflow:auto}.beside>.drawing figure svg{max-height:70vh;width:100%}}
@media (max-width:40rem){.reading-row{grid-template-columns:minmax(0,1fr)}h1{font-size:1.6rem}td,th{min-width:5.5rem}}
@media (prefers-reduced-motion:no-preference){html{scroll-behavior:smooth}}
@media (forced-colors:active){.lit rect,.place:focus rect{stroke:Highlight!important}.finding.lit{outline:3px solid Highlight}.verdict,.finding{border-left-color:CanvasText}}
@media print{.bar,.foot nav,.crumbs,.below,.actions,.filter,.pages,.no-print,.drop,noscript{display:none!important}.beside{display:block}.finding{box-shadow:none!important}.totals li{padding:.1rem .5rem}}
`
