// Words that the sheet’s printers share.
import { SIGNAL_WORDS, type SignalWord } from '../../core/trade/signal-words';

/** Signal words of harm to people; a NOTICE speaks of things alone. */
export const INJURES: ReadonlySet<SignalWord> = new Set(
  (Object.keys(SIGNAL_WORDS) as SignalWord[]).filter((word) => SIGNAL_WORDS[word].injury !== 'none'),
);
