/** How a kitchen sheet looks: black on white, one page of A4 or Letter, nothing smaller than 10 pt. */
export const sheetStyle = `
:root { color-scheme: light; }
* { box-sizing: border-box; }
body { margin: 0 auto; max-width: 190mm; padding: 8mm 0; background: #fff; color: #000; font: 10.5pt/1.17 Arial, Helvetica, "Liberation Sans", "DejaVu Sans Condensed", sans-serif; overflow-wrap: anywhere; }
h1 { display: flex; justify-content: space-between; align-items: baseline; gap: 12pt; margin: 0; padding-bottom: 2pt; border-bottom: 1.5pt solid; font-size: 22pt; line-height: 1.1; }
h1 .total { white-space: nowrap; }
p { margin: 2pt 0; }
table { width: 100%; border-collapse: collapse; font-variant-numeric: tabular-nums; }
caption { text-align: left; font-size: 12.5pt; font-weight: 700; padding: 2pt 0 0; }
caption span { margin-left: 6pt; font-size: 10pt; }
caption span + span { font-weight: 400; }
th, td { text-align: left; vertical-align: top; font-weight: 400; padding: .5pt 6pt .5pt 0; border-bottom: .5pt solid #000; }
thead th { font-size: 10pt; white-space: nowrap; }
tbody :is(td, th) { font-size: 12pt; }
tbody td { white-space: nowrap; }
tbody small { font-size: 10pt; line-height: 1.15; }
.weighed td { font-size: 14pt; font-weight: 700; padding-right: 0; text-align: right; }
.weighed thead { position: absolute; clip-path: inset(50%); }
.weighed caption { padding-top: 0; }
.prepare { display: grid; grid-template-columns: 1fr 1fr; gap: 0 14pt; margin-top: 3pt; }
.rules { margin: 2pt 0; padding: 0; list-style: none; columns: 2; column-gap: 14pt; font-size: 10pt; }
.rules li { padding-left: 6pt; border-left: 1.5pt solid; margin-bottom: 1.5pt; break-inside: avoid; }
.hazard { font-size: 10pt; }
.box { display: inline-block; width: 10pt; height: 10pt; margin-right: 5pt; border: 1.2pt solid; vertical-align: -1pt; }
.blank { display: inline-block; min-width: 44mm; border-bottom: .7pt solid; }
svg { display: block; width: 100%; height: auto; margin-top: 2pt; font-size: 13.5px; }
.grid { stroke: #aaa; stroke-width: .5; }
.mark { stroke: #000; stroke-width: .6; }
.step, .ebc { font-weight: 650; }
.ebc { paint-order: stroke; stroke: #fff; stroke-width: 3px; }
.hatch { stroke: #000; stroke-width: 1.6; }
.hatched { stroke: #000; stroke-width: .6; }
.wanted { fill: none; stroke: #000; stroke-width: .8; stroke-dasharray: 4 3; }
.halo { fill: none; stroke: #fff; stroke-width: 4; }
.middle { fill: none; stroke: #000; stroke-width: 2; }
.note, .foot { font-size: 10pt; margin: 1pt 0; }
.foot { display: flex; justify-content: space-between; gap: 12pt; margin-top: 5pt; }
@media print { body { max-width: none; padding: 0; } svg * { print-color-adjust: exact; -webkit-print-color-adjust: exact; } }
@page { margin: 7mm 10mm; }
`;
