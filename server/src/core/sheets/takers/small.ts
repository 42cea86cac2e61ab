// How the values of pastes are read.
import { nothing, plain, type Taker } from '../taken';
import { anyTakers } from './common';

/** `Electrically conductive: no`. */
const electrically: Taker = (value, { path, label }) => {
  if (!/conductive|leitfähig/i.test(label)) return undefined;
  if (/^(?:no|nein|none|keine|non-conductive|nicht leitend|nicht leitfähig)$/i.test(value.trim()))
    return plain({ path, value: 'insulating' });
  return /^(?:yes|ja)$/i.test(value.trim())
    ? plain({ path, value: 'conductive' })
    : /\d|S\/m/.test(value)
      ? nothing
      : undefined;
};

export const pasteTakers: Readonly<Record<string, Taker>> = { ...anyTakers, electrically };
