// The steps of a build, as its file may state them.
import { choice, group, list, text } from '../parts/field';
import { STEP_KINDS } from '../trade/steps';

export const signalWords = ['DANGER', 'WARNING', 'CAUTION', 'NOTICE'] as const;

/** A safety message in the form of ANSI Z535. */
export const caution = group(
  {
    word: choice(signalWords, 'The signal word, by how badly someone could be hurt and how surely.', {
      example: 'CAUTION',
    }),
    hazard: text('What is dangerous.', 'Cut sheet metal has sharp edges.'),
    consequence: text('What it could do.', 'It could cut fingers.'),
    avoidance: text('What to do, and what not to.', 'Hold parts by their outer frame.'),
    for: choice(STEP_KINDS, 'The kind of step it belongs to, where it stands in the list by itself.', {
      example: 'fit I/O shield',
    }),
  },
  'A caution, read before the step it stands with.',
  '{ word: CAUTION, hazard: Sharp edges., consequence: They could cut fingers., avoidance: Wear gloves. }',
);

export const step = group(
  {
    do: choice(
      STEP_KINDS,
      'What is done, in the words of the list; other words are a step of your own, and not judged.',
      {
        example: 'fit processor',
        own: 'a step',
      },
    ),
    part: text('The part it is done to, by its name, its part file or its slot, where there are several.', 'scratch', {
      refersTo: 'part',
    }),
    note: text(
      'How, in words of your own. A few plain slips are read out of it: a processor pressed down, contacts ' +
        'touched, a vacuum cleaner at the board, a bag as a mat, a hot part touched.',
      'Lift the lever, lay it in, close the lever.',
    ),
    after: list(
      choice(STEP_KINDS, 'A kind of step.', { example: 'fit board', refersTo: 'step' }),
      'Steps that must have been done before this one, for reasons of your own.',
      '[fit board]',
    ),
    caution,
  },
  'One step: a text of the list, or `do:` with more.',
  '{ do: fit processor, note: Lay it in without force. }',
  { bare: 'do' },
);

export const steps = list(
  step,
  'The order of work. Where it is not stated it is worked out from the parts.',
  '[read handbooks, fit processor, fit cooler]',
);
