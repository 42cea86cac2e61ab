// How the sheet looks: one stylesheet, every colour a property that a page or a panel may set.
import { pictureStyle } from './pictures/style';

export const papers = ['a4', 'letter'] as const;
export type Paper = (typeof papers)[number];

const sizes: Readonly<Record<Paper, string>> = { a4: 'A4', letter: 'letter' };

/**
 * Colours by what they mean, for a page of its own; a panel gives them instead. Paper is black on white, and nothing is
 * told by colour alone.
 */
const colours = `
.sheet {
  --sheet-ink: #101418; --sheet-quiet: #4a525a; --sheet-faint: #5d666e; --sheet-hair: #8d969e; --sheet-paper: #fff;
  --sheet-flow: #5b7f95; --sheet-harm: #8f1220; --sheet-stop: #8f1220; --sheet-shortfall: #7a4b00;
  --sheet-note: #1f4d6b; --sheet-unknown: #4a525a; --sheet-clear: #1d5b34; --sheet-focus: #1f4d6b; --sheet-lit: #ffe9a8;
}
@media screen and (prefers-color-scheme: dark) {
  body { background: #15191d; }
  .sheet {
    --sheet-ink: #e6e9ec; --sheet-quiet: #a8b1b9; --sheet-faint: #98a2ab; --sheet-hair: #66707a; --sheet-paper: #15191d;
    --sheet-flow: #6f97ae; --sheet-harm: #ff9aa5; --sheet-stop: #ff9aa5; --sheet-shortfall: #f0bd6b;
    --sheet-note: #94c8ea; --sheet-unknown: #a8b1b9; --sheet-clear: #8ed6a8; --sheet-focus: #94c8ea;
    --sheet-lit: #5a4a12;
  }
}
@media print {
  .sheet {
    --sheet-ink: #000; --sheet-quiet: #000; --sheet-faint: #333; --sheet-hair: #555; --sheet-paper: #fff;
    --sheet-flow: #777; --sheet-harm: #000; --sheet-stop: #000; --sheet-shortfall: #000; --sheet-note: #000;
    --sheet-unknown: #000; --sheet-clear: #000; --sheet-focus: #000; --sheet-lit: #fff;
  }
}`;

const text = `
.sheet, .sheet * { box-sizing: border-box; }
.sheet {
  max-width: 190mm; margin: 0 auto; padding: 6mm 5mm; color: var(--sheet-ink); background: var(--sheet-paper);
  font: 10pt/1.36 Arial, "Liberation Sans", Helvetica, "DejaVu Sans Condensed", sans-serif; overflow-wrap: anywhere;
  font-variant-numeric: tabular-nums;
}
.sheet h1 { font-size: 25pt; line-height: 1.1; margin: 0 0 1.5mm; letter-spacing: -0.01em; }
.sheet h2 {
  font-size: 13pt; line-height: 1.2; margin: 8mm 0 2.5mm; padding-top: 1.6mm; border-top: 0.7mm solid var(--sheet-ink);
}
.sheet h3 { font-size: 10.5pt; line-height: 1.25; margin: 5mm 0 1.5mm; }
.sheet p { margin: 0 0 1.5mm; }
.sheet ul, .sheet ol { margin: 0 0 2mm; padding: 0; list-style: none; }
.sheet .quiet, .sheet .reasons { color: var(--sheet-quiet); } .sheet .quiet { font-size: 8.5pt; }
.sheet .reference {
  display: inline-block; border: 0.25mm solid var(--sheet-ink); border-radius: 2mm; padding: 0 1.2mm; font-size: 7.5pt;
  line-height: 1.35; font-weight: 400;
}
.sheet .reference a { color: inherit; text-decoration: none; white-space: nowrap; }
.sheet .grade { font-weight: 700; } .sheet .grade-note { font-weight: 400; color: var(--sheet-note); }
.sheet .grade-harm, .sheet .grade-stop {
  padding: 0.2mm 1.4mm; color: var(--sheet-paper); background: var(--sheet-harm);
}
.sheet .grade-shortfall { padding: 0 1.2mm; border: 0.3mm solid; color: var(--sheet-shortfall); }
.sheet .kind { font-size: 8.5pt; margin: 0 0 1mm; }
.sheet .purpose { font-size: 11pt; max-width: 150mm; }
.sheet .facts { color: var(--sheet-quiet); font-size: 9pt; margin: 0; }
.sheet .verdict { font-weight: 700; font-size: 11pt; margin: 3mm 0 2mm; padding-left: 3mm; border-left: 1.6mm solid; }
.sheet .verdict-harm, .sheet .verdict-stop { color: var(--sheet-harm); }
.sheet .verdict-shortfall { color: var(--sheet-shortfall); }
.sheet .verdict-note { color: var(--sheet-note); }
.sheet .verdict-clear { color: var(--sheet-clear); }`;

const ticks = `
.sheet input[type="checkbox"] {
  appearance: none; width: 4mm; height: 4mm; margin: 0.35mm 0 0; flex: none; border: 0.35mm solid var(--sheet-ink);
  background: var(--sheet-paper); border-radius: 0;
}
.sheet input[type="checkbox"]:checked {
  background: var(--sheet-ink); box-shadow: inset 0 0 0 0.7mm var(--sheet-paper);
}
.sheet :focus-visible { outline: 0.6mm solid var(--sheet-focus); outline-offset: 0.5mm; }
.sheet label { display: inline-flex; gap: 2mm; align-items: flex-start; }
.sheet .list-title { font-weight: 700; margin: 4mm 0 1mm; break-after: avoid; }
.sheet .ticks { columns: 2; column-gap: 8mm; }
.sheet .ticks li { margin: 0 0 1.2mm; break-inside: avoid; }
.sheet .ticks.small { font-size: 8.5pt; line-height: 1.3; }
.sheet .ticks.small input { width: 3.2mm; height: 3.2mm; }
.sheet .blank, .sheet .blanks li {
  display: block; border-bottom: 0.25mm solid var(--sheet-hair); padding: 2.5mm 0 0.5mm; margin: 0 0 1mm;
  font-size: 8.5pt;
}
.sheet .ticks .blank { margin-left: 6mm; }
.sheet .blanks { display: grid; grid-template-columns: repeat(2, 1fr); gap: 3mm 8mm; margin-top: 5mm; }
.sheet .blanks li { padding-top: 7mm; }
.sheet .head .blanks { grid-template-columns: 2fr 1fr 1fr; margin-top: 0; }`;

const tables = `
.sheet table { width: 100%; border-collapse: collapse; margin: 0 0 4mm; font-size: 9pt; line-height: 1.3; }
.sheet caption { text-align: left; font-weight: 700; padding: 2mm 0 1mm; font-size: 10pt; }
.sheet th, .sheet td { text-align: left; vertical-align: top; padding: 1mm 2.5mm 1mm 0; font-weight: 400; }
.sheet thead th {
  font-size: 8pt; color: var(--sheet-quiet); border-bottom: 0.35mm solid var(--sheet-ink); vertical-align: bottom;
}
.sheet tbody th, .sheet tbody td { border-bottom: 0.2mm solid var(--sheet-hair); }
.sheet tbody tr { break-inside: avoid; }
.sheet th, .sheet td { min-width: 17mm; }
.sheet tbody th { min-width: 24mm; }
.sheet th.write, .sheet td.write { width: 34mm; } .sheet .columns-2 .write { width: 60%; }
#sheet-promises caption, #sheet-findings caption { position: absolute; clip-path: inset(50%); }
#sheet-findings tbody th { min-width: 14mm; } #sheet-findings td:nth-of-type(1) { width: 24mm; }
.sheet td.write { border-bottom: 0.35mm solid var(--sheet-ink); border-left: 1.5mm solid transparent; height: 8mm; }
.sheet .working { font-size: 7.8pt; }
.sheet .working caption { font-size: 8pt; padding: 1mm 0 0.5mm; }
.sheet .working th, .sheet .working td { padding: 0.4mm 2.5mm 0.4mm 0; }
.sheet .working tbody th { width: 42%; }
.sheet .working tbody td:nth-of-type(1) { width: 20%; }
.sheet .depth-1 { padding-left: 3mm !important; } .sheet .depth-2 { padding-left: 6mm !important; }
.sheet .depth-3 { padding-left: 9mm !important; } .sheet .depth-4 { padding-left: 12mm !important; }
.sheet .depth-5 { padding-left: 15mm !important; } .sheet .depth-6 { padding-left: 18mm !important; }`;

const steps = `
.sheet .steps > li { padding: 1.6mm 0; border-bottom: 0.2mm solid var(--sheet-hair); break-inside: avoid; }
.sheet .step label { font-weight: 700; font-size: 10.5pt; }
.sheet .number { min-width: 6mm; text-align: right; }
.sheet .step { display: grid; grid-template-columns: 3fr 2fr; gap: 0 6mm; }
.sheet .what:last-child { grid-column: 1 / -1; }
.sheet .what > :not(label, .reference) { margin: 0.4mm 0 0 14mm; }
.sheet .reasons { margin: 0.3mm 0 0; font-size: 8pt; line-height: 1.3; }
.sheet .note { font-style: italic; }
.sheet .caution {
  margin: 1mm 0 2mm; padding: 1.6mm 2.5mm; border: 0.35mm solid var(--sheet-ink); font-size: 9.2pt; break-inside: avoid;
  break-after: avoid;
}
.sheet .caution { display: grid; grid-template-columns: 27mm 1fr; gap: 0 3mm; align-items: start; }
.sheet .caution strong { padding: 0.2mm 1.5mm; letter-spacing: 0.03em; text-align: center; white-space: nowrap; }
.sheet .caution-danger { border-width: 1mm; } .sheet .caution-warning { border-width: 0.7mm; }
.sheet .caution-danger strong, .sheet .caution-warning strong {
  color: var(--sheet-paper); background: var(--sheet-ink);
}
.sheet .caution-caution strong { border: 0.35mm solid var(--sheet-ink); }
.sheet .caution-notice { border-style: solid none; } .sheet .caution-notice strong { font-style: italic; }
.sheet .finding { padding-left: 3mm; border-left: 0.5mm solid var(--sheet-hair); }
.sheet .mends li::before { content: "Mends it: "; font-weight: 700; }
.sheet figure { margin: 0 0 3mm; break-inside: avoid; }
.sheet details ul { font-size: 9pt; }
.sheet .here:not(g) { background: var(--sheet-lit); }`;

const media = `
@media (max-width: 34em) {
  .sheet { padding: 3mm; } .sheet .ticks, .sheet .blanks { columns: 1; grid-template-columns: 1fr; }
  .sheet th.write, .sheet td.write { width: 18mm; } .sheet tbody th { min-width: 0; }
  .sheet .step, .sheet .caution, .sheet .head .blanks { grid-template-columns: 1fr; }
  .sheet .caution strong { justify-self: start; }
}
@media print {
  .sheet { max-width: none; padding: 0; print-color-adjust: exact; -webkit-print-color-adjust: exact; }
  .sheet h2, .sheet h3, .sheet caption, .sheet thead { break-after: avoid; }
  .sheet .sheet-picture { max-width: 125mm; max-height: 215mm; }
  .sheet details { display: none; }
  #sheet-work, #sheet-working { break-before: page; }
}`;

/** For whatever gives the colours; `.here` marks what stands for the place that a reader is at. */
export const sheetStyle = [text, ticks, tables, steps, media, pictureStyle].join('\n');

/** The whole style of a page of its own; the left margin is for punching. */
export const pageStyle = (paper: Paper): string =>
  `@page { size: ${sizes[paper]}; margin: 13mm 13mm 15mm 20mm; ` +
  '@bottom-left { content: "Bench sheet"; font: 8pt Arial, sans-serif; } ' +
  '@bottom-right { content: counter(page) " of " counter(pages); font: 8pt Arial, sans-serif; } }\n' +
  `body { margin: 0; }\n${colours}\n${sheetStyle}\n`;
