// Units written in the wrong case or by a name that is not read, with every unit they could mean.
import type { Dimension } from './types';
import { spellingsOf, unitSpelled, type UnitName } from './units';

/** Words people write for a unit, in lower case. */
const words: Readonly<Partial<Record<Dimension, Readonly<Record<string, readonly UnitName[]>>>>> = {
  length: {
    inch: ['in'],
    inches: ['in'],
    "''": ['in'],
    feet: ['ft'],
    foot: ['ft'],
    "'": ['ft'],
    '′': ['ft'],
    millimetre: ['mm'],
    millimetres: ['mm'],
    millimeter: ['mm'],
    millimeters: ['mm'],
    metre: ['m'],
    metres: ['m'],
    meter: ['m'],
    meters: ['m'],
  },
  area: { sqmm: ['mm²'], sqm: ['m²'] },
  volume: { cc: ['ml'], litre: ['l'], litres: ['l'], liter: ['l'], liters: ['l'] },
  mass: { gram: ['g'], grams: ['g'], kgs: ['kg'], kilo: ['kg'], kilos: ['kg'], lbs: ['lb'], pounds: ['lb'] },
  power: { watt: ['W'], watts: ['W'], btu: ['BTU/h'] },
  'apparent-power': { 'volt-amps': ['VA'] },
  current: { amp: ['A'], amps: ['A'], ampere: ['A'], amperes: ['A'] },
  voltage: { volt: ['V'], volts: ['V'], vdc: ['V'], vac: ['V'] },
  frequency: { hertz: ['Hz'] },
  time: {
    m: ['min'],
    mins: ['min'],
    sec: ['s'],
    secs: ['s'],
    hr: ['h'],
    hrs: ['h'],
    yr: ['year'],
    yrs: ['year'],
    y: ['year'],
    wk: ['week'],
  },
  temperature: {
    c: ['°C'],
    degc: ['°C'],
    'deg c': ['°C'],
    '° c': ['°C'],
    celsius: ['°C'],
    f: ['°F'],
    degf: ['°F'],
    'deg f': ['°F'],
    '° f': ['°F'],
    fahrenheit: ['°F'],
    '°k': ['kelvin'],
    kelvin: ['kelvin'],
    '°': ['°C', '°F'],
    deg: ['°C', '°F'],
  },
  'temperature-difference': { kelvin: ['K'], '°k': ['K'] },
  'thermal-resistance': { 'c/w': ['K/W'] },
  'data-size': {
    kb: ['kB', 'KiB', 'kbit'],
    mb: ['MB', 'Mbit'],
    gb: ['GB', 'Gbit'],
    tb: ['TB', 'Tbit'],
    g: ['GB'],
    t: ['TB'],
    m: ['MB'],
    mib: ['MiB', 'Mibit'],
    gib: ['GiB', 'Gibit'],
    kib: ['KiB', 'Kibit'],
  },
  flow: { 'm³/hr': ['m³/h'], 'm3/hr': ['m³/h'], lpm: ['l/min'], cfm: ['CFM'] },
  pressure: { mmh20: ['mmH₂O'], 'mm h20': ['mmH₂O'], mmaq: ['mmH₂O'], inh20: ['inH₂O'] },
  'rotation-speed': { 'u/min': ['rpm'], '/min': ['rpm'], 'r.p.m.': ['rpm'], 'min^-1': ['rpm'] },
  // A level without its weighting is another quantity: dB never becomes dBA.
  'sound-level': { db: [], decibel: [], decibels: [] },
  'sound-power': { ba: ['bel'] },
  percent: { percent: ['%'], 'per cent': ['%'], pct: ['%'] },
  money: { '€': ['EUR'], euro: ['EUR'], euros: ['EUR'] },
  angle: { degree: ['°'], degrees: ['°'] },
  force: { newton: ['N'], newtons: ['N'] },
};

const wordMaps = new Map(
  Object.entries(words).map(([dimension, table]) => [dimension as string, new Map(Object.entries(table))]),
);

/** `GB/s` of `GBps`, `MT/s` of `MT`: rates in which the “per second” was written otherwise or left out. */
function perSecond(word: string): string {
  return `${word.replace(/(?:ps|\/sec|\/second|\/s)$/i, '')}/s`;
}

function inAnyCase(word: string, dimension: Dimension): UnitName[] {
  const lower = word.toLowerCase();
  return [...spellingsOf(dimension)].filter(([spelling]) => spelling.toLowerCase() === lower).map(([, name]) => name);
}

/** Every unit of the dimension that a wrongly written word could mean, bytes before bits; empty where none is. */
export function slipsOf(word: string, dimension: Dimension): readonly UnitName[] {
  const listed = wordMaps.get(dimension)?.get(word.toLowerCase());
  if (listed !== undefined) return listed;
  if (dimension !== 'data-rate' && dimension !== 'transfer-rate') return [...new Set(inAnyCase(word, dimension))];
  const rate = perSecond(word);
  const exact = unitSpelled(rate, dimension);
  return exact === undefined ? bytesFirst([...new Set(inAnyCase(rate, dimension))]) : [exact];
}

function bytesFirst(names: readonly UnitName[]): UnitName[] {
  const inBits = (name: UnitName): number => (/b(?:it)?\/s$/.test(name) ? 1 : 0);
  return [...names].sort((one, other) => inBits(one) - inBits(other));
}
