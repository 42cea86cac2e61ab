// The expressions that recheck (4.5.0) takes long over or cannot decide, each with how it was judged. One that changes
// falls out of this list and is judged anew.

export const judgedSlowly: ReadonlyMap<string, string> = new Map([
  [String.raw`/[^\p{L}\p{N}]+/u`, 'recheck: linear'],
  [String.raw`/^([^]*?)((?:\n\(Did you mean [^\n]*\))?\n?)$/`, 'recheck: linear'],
  [String.raw`/\d\s*(?:mm³|mm3|µl|ul|ml|cm³)/i`, 'recheck: linear'],
  [String.raw`/^\s*#\s*\^+\s*$/`, 'recheck: linear'],
  [
    String.raw`/(?<!\S)[+-]?(?=[\dOoIl.]*\d)(?=[\d.]*[OoIl])[\dOoIl]+(?:\.[\dOoIl]+)?(?=\s|$)/g`,
    'by hand: it begins only where a word begins, and every part of it ends with the word',
  ],
  [String.raw`/^[+-]?(?:0|[1-9]\d*)(?:\.\d+)?$/`, 'recheck: linear'],
  [String.raw`/^[+-]?(?:\d+(?:\.\d*)?|\.\d+)(?:[eE][+-]?\d+)?$/`, 'recheck: linear'],
  [String.raw`/^([+-]?)([1-9]\d{0,2})(?:([,.'’_ ])\d{3})(?:\3\d{3})*(?:([.,])\d+)?$/`, 'recheck: safe by search'],
  [String.raw`/^[+-]?(?=[.,]?\d)[\d.,]*(?:['’_ ]\d{3}(?!\d)[\d.,]*)*(?:[eE][+-]?\d+)?/`, 'recheck: safe by search'],
  [String.raw`/^(?:(at most\s|up to\s|≤|<=)|(?:at least\s|≥|>=))\s*/i`, 'recheck: linear'],
  [
    String.raw`/(?:\sto\s+|[–-]\s*)(?=[+-]?[.,]?\d)/`,
    'by hand: `to` and a dash are no blanks, so the blanks behind one are never those behind another',
  ],
  [String.raw`/^(€|[A-Za-z]{3})\s*(?=[+-]?\d)/`, 'recheck: safe by search'],
  [String.raw`/\bhot\b|\bburns?\b|\bcool(?:s|ed)?\s+down\b/i`, 'recheck: linear'],
  [
    String.raw`/\b(?:(?:coin|button|clock|CR\d{4})[- ]?(?:cells?|batter(?:y|ies))|CR\d{4}|CMOS\s+batter(?` +
      String.raw`:y|ies))\b/i`,
    'by hand: a list of words; only blanks repeat, between two words that are no blanks',
  ],
  [String.raw`/^(displayport .+?) ?[x×]([124])$/`, 'recheck: linear'],
  [String.raw`/\d+/g`, 'recheck: linear'],
  [String.raw`/^\s*socket\b/i`, 'recheck: linear'],
  [String.raw`/^Unexpected \S+ token/`, 'recheck: linear'],
  [String.raw`/^%YAML[ \t]+1\.1(?=\s|$)/`, 'recheck: safe by search'],
  [String.raw`/^([a-z][\w+.-]*:(?:\/\/[^/?#]*)?)([^?#]*)([^]*)$/i`, 'recheck: linear'],
  [String.raw`/^kind:[ \t]*([a-z]+)[ \t]*\r?$/m`, 'recheck: linear'],
]);
