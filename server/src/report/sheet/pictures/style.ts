// The style of the pictures: shapes and strokes carry the meaning, colour only repeats it.

/**
 * Goes into the style sheet of whatever shows the pictures. Colours come from the sheet’s own properties
 * (`--sheet-ink`, `--sheet-faint`, `--sheet-paper`, `--sheet-flow` and one a grade); without them all is drawn in the
 * colour of the text.
 */
export const pictureStyle = `
.sheet-picture { display: block; width: 100%; max-width: 36rem; height: auto; overflow: visible; break-inside: avoid;
  color: var(--sheet-ink, currentColor); }
.sheet-picture .p-text { font-size: 13.5px; fill: var(--sheet-ink, currentColor); stroke: none; }
.sheet-picture .p-small { font-size: 12.5px; }
.sheet-picture .p-strong { font-weight: 600; }
.sheet-picture .p-faint { fill: var(--sheet-faint, currentColor); }
.sheet-picture .p-halo { paint-order: stroke; stroke: var(--sheet-paper, Canvas); stroke-width: 4px;
  stroke-linejoin: round; }
.sheet-picture rect, .sheet-picture path, .sheet-picture line, .sheet-picture circle { fill: none;
  stroke: var(--sheet-ink, currentColor); stroke-width: 1px; }
.sheet-picture .p-flow, .sheet-picture .p-solid { fill: var(--sheet-flow, var(--sheet-ink, currentColor));
  fill-opacity: .45; stroke-width: .8px; }
.sheet-picture .p-band { fill: var(--sheet-flow, var(--sheet-ink, currentColor)); fill-opacity: .14;
  stroke-width: .8px; stroke-dasharray: 1 2; }
.sheet-picture .p-bar { fill: var(--sheet-ink, currentColor); stroke: none; }
.sheet-picture .p-plate { fill: var(--sheet-paper, Canvas); fill-opacity: .8; stroke: none; }
.sheet-picture .p-open { stroke-dasharray: 4 3; fill: none; }
.sheet-picture .p-track { stroke: var(--sheet-faint, currentColor); stroke-width: .6px; }
.sheet-picture .p-limit { stroke-width: 2px; }
.sheet-picture .p-limits { stroke-width: .8px; stroke-dasharray: 1 2; }
.sheet-picture .p-over { stroke: var(--sheet-stop, currentColor); stroke-width: 1.2px; }
.sheet-picture .p-rule { stroke: var(--sheet-faint, currentColor); stroke-width: .6px; stroke-opacity: .45; }
.sheet-picture .p-wall { stroke-width: 2px; }
.sheet-picture .p-dot { fill: var(--sheet-ink, currentColor); }
.sheet-picture .p-margin { stroke-width: 2px; }
.sheet-picture .p-link { stroke-dasharray: 1 2; }
.sheet-picture .p-thick { stroke-width: 3px; }
.sheet-picture .p-block { fill: var(--sheet-paper, Canvas); stroke-width: 1.6px; }
.sheet-picture .p-lane { stroke-width: 1.4px; }
.sheet-picture .p-lane-maybe { stroke-width: 1.2px; stroke-dasharray: 6 2; }
.sheet-picture .p-lane-idle { stroke-width: .8px; stroke-dasharray: 2 3; }
.sheet-picture .p-harm { fill: var(--sheet-harm, currentColor); stroke: var(--sheet-harm, currentColor); }
.sheet-picture .p-stop { fill: var(--sheet-stop, currentColor); stroke: var(--sheet-stop, currentColor); }
.sheet-picture .p-shortfall { fill: var(--sheet-shortfall, currentColor);
  stroke: var(--sheet-shortfall, currentColor); }
.sheet-picture .p-note { stroke: var(--sheet-note, currentColor); stroke-width: 1.8px; }
.sheet-picture .p-unknown { stroke: var(--sheet-unknown, currentColor); stroke-width: 1.4px; stroke-dasharray: 2.5 2; }
.sheet-picture .p-thing { cursor: pointer; outline: none; }
.sheet-picture .p-thing:focus-visible .p-text, .sheet-picture .p-thing:hover .p-text { text-decoration: underline; }
.sheet-picture .p-thing:focus-visible { outline: 2px solid var(--sheet-focus, currentColor); outline-offset: 2px; }
.sheet-picture .p-thing.here .p-text { font-weight: 700; }
.sheet-picture .p-thing.here rect, .sheet-picture .p-thing.here path { stroke-width: 2px; }
@media (forced-colors: active) {
  .sheet-picture, .sheet-picture .p-text { fill: CanvasText; color: CanvasText; }
  .sheet-picture .p-halo { stroke: Canvas; }
  .sheet-picture .p-plate { fill: Canvas; }
}
@media print { .sheet-picture { max-width: 34rem; } .sheet-picture .p-thing { cursor: auto; } }
`;
