/** How a report looks, on the page, in its own file and on paper. A4 and letter both hold it. */
export const LAB_REPORT_STYLE = `
.report {
  box-sizing: border-box;
  max-width: 46rem;
  margin: 0 auto;
  padding: 1.5rem;
  background: #ffffff;
  color: #16191c;
  font-family: "Segoe UI", "Noto Sans", "Liberation Sans", sans-serif;
  font-size: 0.95rem;
  line-height: 1.45;
}
.report h1 { font-size: 1.6rem; margin: 0 0 0.25rem; overflow-wrap: anywhere; }
.report h2 { font-size: 1.2rem; margin: 1.5rem 0 0.4rem; border-bottom: 1px solid #8a8d90; }
.report h3 { font-size: 1rem; margin: 0.6rem 0 0.1rem; }
.report p { margin: 0.3rem 0; }
.report .date, .report .small, .report figcaption { font-size: 0.85rem; color: #4a5056; }
.report .typed { white-space: pre-wrap; overflow-wrap: anywhere; }
.report .blank { margin-top: 1.1rem; border-bottom: 1px solid #16191c; min-height: 1.6rem; font-size: 0.85rem; color: #4a5056; }
.report .line { border-bottom: 1px solid #8a8d90; height: 1.9rem; margin: 0; }
.report .result { font-size: 1.35rem; font-weight: 600; }
.report table { border-collapse: collapse; width: 100%; font-size: 0.9rem; }
.report th, .report td { text-align: left; vertical-align: top; padding: 0.2rem 0.5rem 0.2rem 0; border-bottom: 1px solid #cfd2d4; overflow-wrap: anywhere; }
.report .facts th { width: 11rem; font-weight: 600; }
.report th.number, .report td.number { text-align: right; font-variant-numeric: tabular-nums; overflow-wrap: normal; }
.report .budget { font-size: 0.75rem; }
.report .budget th, .report .budget td, .report .marks th, .report .marks td:nth-child(4) { overflow-wrap: normal; }
.report .budget tbody th { font-weight: 400; }
.report .budget td:last-child { white-space: nowrap; }
.report ul, .report ol { margin: 0.3rem 0; padding-left: 1.4rem; }
.report .formula { font-style: italic; }
.report .outcome { font-weight: 600; }
.report figure { margin: 0.8rem 0; }
.report svg { display: block; width: 100%; height: auto; max-width: 40rem; }
.report .narrow { display: none; }
@media screen and (max-width: 47.99rem) {
  .report { padding: 0.75rem; }
  .report .stacked thead { display: none; }
  .report .stacked, .report .stacked tbody { display: block; font-size: 0.9rem; }
  .report .stacked tr { display: grid; grid-template-columns: repeat(auto-fill, minmax(8rem, 1fr)); gap: 0.25rem 0.75rem; padding: 0.5rem 0; border-bottom: 1px solid #cfd2d4; }
  .report .stacked th, .report .stacked td { padding: 0; border: 0; text-align: left; }
  .report .stacked tbody th { grid-column: 1 / -1; font-weight: 600; }
  .report .stacked td::before { content: attr(data-name); display: block; color: #4a5056; font-size: 0.75rem; }
}
@media screen and (max-width: 33.99rem) {
  .report .wide { display: none; }
  .report .narrow { display: block; }
  .report .facts th, .report .facts td { display: block; width: auto; padding-right: 0; }
  .report .facts th { padding-bottom: 0; border: 0; }
  .report .facts td { padding-top: 0; }
}
@media print {
  .report { max-width: none; margin: 0; padding: 0; font-size: 10pt; }
  .report h1 { font-size: 17pt; }
  .report h2 { font-size: 12.5pt; break-after: avoid; }
  .report h3 { font-size: 10.5pt; break-after: avoid; }
  .report .result { font-size: 14pt; }
  .report figure, .report tr, .report li, .report .whole { break-inside: avoid; }
  .report thead { display: table-header-group; }
  .report h2 + *, .report h3 + .formula { break-before: avoid; }
  .report p { orphans: 3; widows: 3; }
  .report svg { max-width: 13.5cm; margin: 0 auto; }
  .report table { font-size: 9pt; }
  .report .budget { font-size: 8pt; }
}
`;
