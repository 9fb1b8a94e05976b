/** How a report looks, on a screen and on paper (A4 and Letter); it has no fonts or pictures from elsewhere. */
export const reportStyle = `
:root { color-scheme: light; }
* { box-sizing: border-box; }
body { margin: 0 auto; max-width: 50rem; padding: 1.5rem; background: #fff; color: #201b17; font: 1rem/1.45 system-ui, sans-serif; overflow-wrap: anywhere; }
h1 { margin: 0; font-size: 2rem; line-height: 1.15; }
h2 { margin: 2rem 0 .5rem; font-size: 1.15rem; border-top: 2px solid; padding-top: .5rem; break-after: avoid; }
p { margin: .4rem 0; }
.word { display: inline-block; padding: .1rem .6rem; border: 2px solid; font-weight: 700; }
.landed { font-size: 1.5rem; font-weight: 650; }
.drop { display: inline-block; width: 2rem; height: 2rem; border-radius: 50%; border: 1px solid #555; vertical-align: -.45rem; }
.quiet { color: #5a524b; font-size: .875rem; }
svg { width: 100%; height: auto; margin-top: 1rem; font-size: 11px; break-inside: avoid; }
svg text { fill: #201b17; }
.grid { stroke: #ccc; stroke-width: .6; }
.mark { stroke: #777; stroke-width: .8; }
.step { font-weight: 650; }
.wanted { fill: none; stroke: #201b17; stroke-width: 1; stroke-dasharray: 4 3; }
.band { fill: #201b17; fill-opacity: .2; }
.middle { fill: none; stroke: #201b17; stroke-width: 1.4; }
.dots { stroke: #201b17; stroke-width: 2.2; stroke-linecap: round; fill: none; }
.deed { fill: #201b17; }
.test { fill: #fff; stroke: #201b17; stroke-width: 1.6; }
table { width: 100%; border-collapse: collapse; font-variant-numeric: tabular-nums; margin-top: .5rem; }
caption { text-align: left; font-weight: 650; padding: .3rem 0; }
th, td { text-align: left; vertical-align: top; padding: .3rem .8rem .3rem 0; border-bottom: 1px solid #ccc; font-weight: 400; }
thead th { font-size: .875rem; color: #5a524b; }
tbody th { overflow-wrap: normal; }
tr { break-inside: avoid; }
ul { padding-left: 1.2rem; }
@media print { body { max-width: none; padding: 0; font-size: 10.5pt; } h1 { font-size: 20pt; } th, td { padding-block: .15rem; } .log { columns: 2; column-gap: 8mm; } .log th { white-space: nowrap; } svg *, .drop { print-color-adjust: exact; -webkit-print-color-adjust: exact; } }
@page { margin: 16mm; }
`;
