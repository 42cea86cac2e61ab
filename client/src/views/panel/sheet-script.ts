// The bench sheet’s own script: takes blocks in, lights up the cursor’s line, and says where a reader wants to go.
import { isPanelState, isToPanel, type FromPanel, type PanelState } from '../sheet-messages';
import { Lights } from './lights';
import { goOnAsked } from './going';
import { ShownSheet } from './shown-sheet';
import { Ticks } from './ticks';

declare function acquireVsCodeApi(): {
  postMessage(message: FromPanel): void;
  getState(): unknown;
  setState(state: PanelState): void;
};

function start(): void {
  const editor = acquireVsCodeApi();
  const main = document.querySelector('main')!;
  const state = editor.getState();
  const ticks = new Ticks(main, isPanelState(state) ? state : undefined, (next) => editor.setState(next));
  const lights = new Lights(main);
  const sheet = new ShownSheet(main, document.querySelector('[role="status"]')!, ticks);
  addEventListener('message', ({ data }: MessageEvent<unknown>) => {
    if (!isToPanel(data)) return;
    if (data.type === 'sheet') sheet.show(data);
    else if (data.type === 'none') sheet.clear(data.why);
    else lights.set(data);
    if (data.type !== 'lit') lights.again();
  });
  goOnAsked(main, (place) => editor.postMessage({ type: 'go', place }));
  editor.postMessage({ type: 'ready' });
}

start();
