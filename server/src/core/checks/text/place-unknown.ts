// Slots, ports, headers and mounts that the board or the case does not have.
import { missing } from '../../figures/figure';
import { offered, takenPlaces } from '../../figures/places';
import { say } from '../../figures/say';
import { lacking, sure } from '../../figures/truth';
import { nearest } from '../../text';
import { check } from '../check';
import { change, outcome } from '../kit';

export default check({
  id: 'place-unknown',
  area: 'text',
  grade: 'stop',
  what: 'Every slot, port, header, bay and mount that a part names exists on the board or in the case.',
  why: 'A name that is not printed on the board sends someone searching at the bench, and every check of that place stays open.',
  source: 'the format’s own rule',
  examples: [{
    faulty: `
parts:
  board: { slots: { M2_1: { kind: M.2 }, M2_2: { kind: M.2 } } }
  drives: [{ name: scratch, slot: M2_3 }]
#                                 ^^^^
`,
    mended: `
parts:
  board: { slots: { M2_1: { kind: M.2 }, M2_2: { kind: M.2 } } }
  drives: [{ name: scratch, slot: M2_1 }]
`,
  }],
  *test(build) {
    for (const { kind, name, fact, placed } of takenPlaces(build)) {
      const place = offered(build, kind);
      if (!place || !fact.node) continue;
      const truth = place.names ? sure(place.names.includes(name), fact) : lacking([missing(place.fact, `${place.fact.key} of ${place.by.label}`)], fact);
      yield outcome({ doc: build.doc, span: fact.node.span, path: `${placed.path}.${fact.key}:${name}` }, truth, {
        broken: () => say`${place.by.label} has no ${kind} called ${fact}.`,
        fixes: () => {
          const taken = new Set(takenPlaces(build).map((one) => `${one.kind} ${one.name}`));
          const free = place.names?.filter((other) => !taken.has(`${kind} ${other}`)) ?? [];
          const near = nearest(name, free);
          return near === undefined ? [] : [change(fact, near, `Write ${near}`)];
        },
      });
    }
  },
});
