// The page of the bench sheet’s panel: its policy, and the sheet’s colours taken from the editor’s theme.

export interface Page {
  readonly css: string;
  readonly script: string;
  readonly nonce: string;
  readonly lang: string;
  /** Words of the page in that language. */
  readonly word: (english: string) => string;
}

/** What a page may hold is written here alone; blocks come later, as messages. */
export function sheetPage({ css, script, nonce, lang, word }: Page): string {
  const policy =
    `default-src 'none'; style-src 'nonce-${nonce}'; script-src 'nonce-${nonce}'; ` +
    "base-uri 'none'; form-action 'none'";
  return [
    '<!DOCTYPE html>',
    `<html lang="${lang}">`,
    '<head>',
    '<meta charset="utf-8">',
    `<meta http-equiv="Content-Security-Policy" content="${policy}">`,
    '<meta name="viewport" content="width=device-width, initial-scale=1">',
    `<title>${word('Bench sheet')}</title>`,
    `<style nonce="${nonce}">${css}\n${themed}</style>`,
    '</head>',
    '<body>',
    '<p class="sheet-status" role="status"></p>',
    '<main class="sheet" tabindex="-1" aria-describedby="sheet-keys"></main>',
    `<p id="sheet-keys" hidden>${keysOf(word)}</p>`,
    `<p id="sheet-old" hidden>${oldOf(word)}</p>`,
    `<script nonce="${nonce}" src="${script}"></script>`,
    '</body>',
    '</html>',
  ].join('\n');
}

const keysOf = (word: Page['word']): string =>
  `${word('The arrow keys go from line to line.')} ` +
  word('Enter goes to the line of the build, and once more to where it is described.');

/** Said above a sheet that is not that of the text at hand. */
const oldOf = (word: Page['word']): string =>
  word('The text cannot be read at the moment. This is the sheet of the last text that could.');

/** A colour of the theme, drawn towards that of the text: themes choose some of them for large shapes alone. */
const towardsInk = (colour: string, share: number): string =>
  `color-mix(in srgb, var(--vscode-${colour}) ${share}%, var(--vscode-editor-foreground))`;

const themed = `
body { margin: 0; padding: 0; background: var(--vscode-editor-background); color: var(--vscode-editor-foreground); }
.sheet {
  --sheet-ink: var(--vscode-editor-foreground); --sheet-paper: var(--vscode-editor-background);
  --sheet-quiet: color-mix(in srgb, var(--vscode-editor-foreground) 78%, var(--vscode-editor-background));
  --sheet-faint: var(--sheet-quiet);
  --sheet-hair: color-mix(in srgb, var(--vscode-editor-foreground) 26%, var(--vscode-editor-background));
  --sheet-flow: ${towardsInk('charts-blue', 70)};
  --sheet-harm: ${towardsInk('errorForeground', 60)}; --sheet-stop: var(--sheet-harm);
  --sheet-shortfall: ${towardsInk('editorWarning-foreground', 45)};
  --sheet-note: ${towardsInk('editorInfo-foreground', 60)}; --sheet-unknown: var(--sheet-quiet);
  --sheet-clear: ${towardsInk('testing-iconPassed', 45)}; --sheet-focus: var(--vscode-focusBorder);
  --sheet-lit: color-mix(in srgb, var(--vscode-editor-selectionBackground) 45%, var(--vscode-editor-background));
  max-width: 860px; margin: 0 auto; padding: 20px 24px 60px; outline: none;
  font-family: var(--vscode-font-family); font-size: 13px; line-height: 1.45;
}
.sheet h1 { font-size: 26px; font-weight: 600; }
.sheet h2 {
  font-size: 16px; font-weight: 600; margin-top: 34px; padding-top: 10px; border-top: 1px solid var(--sheet-hair);
}
.sheet h3 { font-size: 13px; font-weight: 600; }
.sheet table, .sheet .caution { font-size: 12.5px; }
.sheet .quiet, .sheet .reasons, .sheet thead th, .sheet .working, .sheet .working caption { font-size: 12px; }
.sheet .reference { font-size: 11px; border-color: var(--sheet-hair); }
.sheet > * { contain: layout paint; overflow-clip-margin: 8px; }
.sheet > * > :last-child { margin-bottom: 0; }
.sheet .kind, .sheet .head .blanks { display: none; }
.sheet input[type="checkbox"] { width: 16px; height: 16px; margin-top: 1px; cursor: pointer; }
.sheet [data-place] { cursor: pointer; }
.sheet .p-thing :is(rect, path, circle) { pointer-events: all; }
.sheet .here:not(g) { box-shadow: -4px 0 var(--sheet-ink); }
.sheet :focus-visible { outline: 2px solid var(--sheet-focus); outline-offset: 2px; }
.sheet[data-old] .sheet-picture { filter: grayscale(1); }
.sheet-status { margin: 0; position: sticky; top: 0; z-index: 1; }
.sheet-status:not(:empty) {
  padding: 8px 24px; font: 13px/1.4 var(--vscode-font-family); color: var(--vscode-editor-foreground);
  background: var(--vscode-editor-background); border-bottom: 1px solid var(--vscode-editor-foreground);
}
body.vscode-high-contrast .sheet {
  --sheet-quiet: var(--vscode-editor-foreground); --sheet-hair: var(--vscode-contrastBorder);
  --sheet-lit: var(--vscode-editor-background); --sheet-focus: var(--vscode-contrastActiveBorder);
}
body.vscode-high-contrast .sheet .here:not(g) {
  box-shadow: none; outline: 2px dashed var(--vscode-contrastActiveBorder); outline-offset: 1px;
}
@media (forced-colors: active) {
  .sheet .here:not(g) { box-shadow: none; outline: 2px dashed Highlight; outline-offset: 1px; }
  .sheet input[type="checkbox"] { appearance: auto; }
}
@media (max-width: 34em) { .sheet .reasons { margin-left: 14mm; } }
@media (max-width: 520px) { .sheet { padding: 14px 14px 40px; } .sheet-status:not(:empty) { padding: 8px 14px; } }`;
