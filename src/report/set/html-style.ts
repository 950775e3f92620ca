import { createHash } from 'node:crypto'
import { REPORT_STYLE } from '../html-style.js'

/** The one style sheet of the pages of a set: that of a report, and what a set has besides. */
export const SET_STYLE = `${REPORT_STYLE}
ul.inline{list-style:none;padding:0;margin:0 0 1rem}
ul.inline li{display:inline}ul.inline li:not(:last-child)::after{content:"; "}
ul.open{padding-left:0;list-style:none}
.sign,.inspection{border-top:.35rem solid var(--rule);margin-top:3rem}
.sign h2,.inspection h2{margin-top:1.5rem}
.sign .verdict{font-size:1rem}.sign .verdict strong{font-size:1.25rem}
.sign>dl{margin:0 0 1rem}
h4{font-size:1rem;margin:0 0 .5rem}
.sign h3,.inspection h3{margin:1.5rem 0 .6rem}
figure svg{max-height:28rem}
.reading{display:inline-block;white-space:nowrap;margin:0 .6rem .4rem 0}
.blank.short{min-width:3rem}
.sign caption,.walk caption{position:absolute;width:1px;height:1px;overflow:hidden;clip-path:inset(50%);white-space:nowrap}
@media print{.sign,.inspection{border-top:0;break-before:page;margin-top:0}.walk{break-inside:avoid}.sign h3,.inspection h3,h4{margin:.5rem 0 .2rem;font-size:9.5pt;break-after:avoid}.sign .verdict strong{font-size:11pt}.sign .verdict{font-size:8.5pt;padding:.2rem .7rem}figure svg{max-height:60mm}.blanks .blank,td .blank{height:2.2em}.reading{line-height:2.2}.inspection td,.inspection th{padding:.35rem}}
`

/** The source expression that a content security policy needs to allow exactly this style, without its quotes. */
export const SET_STYLE_HASH = `sha256-${createHash('sha256').update(SET_STYLE).digest('base64')}`
