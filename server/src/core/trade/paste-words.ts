// How data sheets spell what a paste is made of and how it was tested. Source: common practice throughout.
import { vocabulary } from './vocabulary';

export const PASTE_CLASS_WORDS = vocabulary('a filling of pastes', {
  silicone: ['silicone grease', 'silicone-based', 'silicone oil', 'white silicone'],
  ceramic: [
    'ceramic-based',
    'metal oxide',
    'metal oxides',
    'zinc oxide',
    'aluminium oxide',
    'aluminum oxide',
    'alumina',
  ],
  carbon: ['carbon-based', 'carbon particles', 'carbon micro-particles', 'graphene', 'diamond'],
  'metal particles': [
    'metal-based',
    'silver',
    'silver-based',
    'silver particles',
    'aluminium powder',
    'aluminum powder',
    'metal',
  ],
  'liquid metal': ['gallium', 'gallium alloy', 'gallium-based', 'liquid-metal'],
  pad: ['thermal pad', 'phase-change pad', 'phase change', 'graphite pad', 'carbon pad', 'PCM pad'],
});

/** `non-conductive` speaks of shorts; of what it couples at high frequencies only a sheet that says so tells. */
export const ELECTRICALLY_WORDS = vocabulary('an electrical property', {
  insulating: [
    'non-conductive',
    'not conductive',
    'nonconductive',
    'electrically insulating',
    'electrically non-conductive',
    'not electrically conductive',
    'insulator',
    'dielectric',
  ],
  capacitive: ['slightly capacitive', 'capacitive, not conductive'],
  conductive: ['electrically conductive', 'conducting', 'conductor'],
});

export const TEST_METHOD_WORDS = vocabulary('a method of testing', {
  'ASTM D5470': ['ASTM D-5470', 'D5470', 'ASTM D 5470', 'ASTM-D5470-17', 'ASTM D5470-17'],
  'ISO 22007-2': ['ISO22007-2', 'hot disk', 'hot disc', 'transient plane source', 'TPS'],
  'laser flash': ['LFA', 'laser flash analysis', 'ASTM E1461'],
  other: ['hot wire', 'hot-wire', 'ASTM D7896', 'in-house'],
});

export const COOLER_PASTE_WORDS = vocabulary('a state of paste', {
  'pad applied': ['pre-applied pad', 'thermal pad applied', 'pad pre-applied'],
  'paste applied': ['pre-applied paste', 'paste pre-applied', 'pre-printed paste', 'pre-applied thermal paste'],
  'tube in the box': [
    'tube',
    'syringe',
    'tube included',
    'syringe included',
    'tube of paste',
    'separate tube',
    'in the box',
  ],
  none: ['no', 'not included', 'without', 'without paste'],
  // What a sheet leaves open: on the base, as a pad or as paste; or somewhere in the box.
  applied: ['pre-applied', 'preapplied', 'factory applied', 'factory-applied', 'pre-applied compound'],
  included: ['yes', 'included in the box', 'paste included', 'thermal paste included', 'comes with paste'],
});

export const THREAD_WORDS = vocabulary('a thread', {
  M3: ['M3x0.5', 'M 3', 'metric M3'],
  '6-32': ['6-32 UNC', '#6-32', '#6-32 UNC', 'No. 6-32', 'UNC 6-32', '6/32'],
});
