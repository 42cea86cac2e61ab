// One seed for all that is drawn in tests, so that every run of a tree says the same; FETTLE_SEED sets another.
import fc from 'fast-check';

fc.configureGlobal({ seed: Number(process.env.FETTLE_SEED ?? 20261125) });
