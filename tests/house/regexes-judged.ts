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
  [
    String.raw`/\b(?:alcohol|isopropyl|isopropanol|swab|contact\s+cleaner)\b/i`,
    'by hand: a list of words; only blanks repeat, between two words that are no blanks',
  ],
  [
    String.raw`/\b(?:lever|latch|arm|frame|load\s+plate|retention|cover|cap|cooler|memory|modules?|bracke` +
      String.raw`t|pad|film|tape|heat\s?sink)\b/gi`,
    'by hand: a list of words; only blanks repeat, between two words that are no blanks',
  ],
  [
    String.raw`/\b(?:lay|lays|put|puts|place|places|drop|drops|set|sets|insert|seat|lower)\s+(?:it|in)\b|` +
      String.raw`\b(?:processor|cpu)\b/gi`,
    'by hand: a list of words; only blanks repeat, between two words that are no blanks',
  ],
  [String.raw`/^\s*(?:down\s+)?in(?:to)?\s+(?:the|its)\s+socket\b/i`, 'recheck: linear'],
  [
    String.raw`/\b(?:not|never|no|zero|without|avoid|avoids|avoiding|nothing|nobody|nor|neither|cannot|re` +
      String.raw`frain|stop|wrong|mistake|forbidden|banned|instead\s+of|rather\s+than|don['’]?t|mustn['` +
      String.raw`’]?t|needn['’]?t|shouldn['’]?t|won['’]?t|can['’]?t|doesn['’]?t)\b|^\s*(?:if|wh` +
      String.raw`oever)\b/i`,
    'recheck: safe by search',
  ],
  [
    String.raw`/\b(?:(?:is|are|must|may|can|should|has|have|will|would)\s+(?:not|never)|wrong|forbidden|b` +
      String.raw`anned|how\s+(?:pins|contacts)|bends?|ruins?|harms?|damages?|destroys?|kills?|corrodes?|cha` +
      String.raw`rges?\s+up|leaves?\s+(?:grease|marks)|stays?\s+(?:out|away))\b/i`,
    'by hand: a list of words; only blanks repeat, between two words that are no blanks',
  ],
  [String.raw`/\b(not|never|don['’]t),[^,.;!?]*,/gi`, 'recheck: linear'],
  [String.raw`/([.;:!?,\n]+|\s(?:but|then)\s)/i`, 'recheck: linear'],
  [String.raw`/^\s+by\s+(?:the|its)\b/i`, 'recheck: linear'],
  [String.raw`/\b(?:it|which|that)\s*$/i`, 'recheck: linear'],
  [String.raw`/\bhot\b|\bburns?\b|\bcool(?:s|ed)?\s+down\b/i`, 'recheck: linear'],
  [
    String.raw`/\b(?:(?:coin|button|clock|CR\d{4})[- ]?(?:cells?|batter(?:y|ies))|CR\d{4}|CMOS\s+batter(?` +
      String.raw`:y|ies))\b/i`,
    'by hand: a list of words; only blanks repeat, between two words that are no blanks',
  ],
  [
    String.raw`/\b(?:kills?(?!\s+(?:the\s+|an?\s+|its\s+|any\s+)?(?:board|processor|cpu|drive|memory|modu` +
      String.raw`le|card|supply|parts?|port|header|fan|pump|chip|socket|slot|data))|(?:could|will|may|can)` +
      String.raw`\s+die|death|fatal(?!\s+error)|deadly|lethal|electrocut\w*|suffocat\w*|blind\w*|amputat\w*` +
      String.raw`|(?:serious|severe|grave|bad)(?:ly)?\s+(?:injur\w*|burn\w*|hurt|wound\w*)|(?:injur\w*|burn` +
      String.raw`\w*|hurt|wound\w*)\s+(?:seriously|severely|badly|gravely)|los(?:e|ing)\s+(?:an?\s+|the\s+|` +
      String.raw`your\s+|his\s+|her\s+)?(?:finger|hand|eye|sight)|stops?\s+the\s+heart|fires?)\b|\b(?:could` +
      String.raw`|will|may)\s+burn(?:,|\.|$)/i`,
    'by hand: a list of words; letters repeat only behind a word’s beginning, blanks between two words',
  ],
  [
    String.raw`/\b(?:injur\w*|hurts?|bruis\w*|irritat\w*|crush\w*|pinch\w*|scald\w*)\b/i`,
    'by hand: a list of words; letters repeat only behind a word’s beginning, blanks between two words',
  ],
  [
    String.raw`/\b(?:ruins?|damag\w*|destroy\w*|breaks?|bends?|shorts?|shuts?\s+down|fails?|spoils?|corro` +
      String.raw`d\w*|tears?|cracks?|kills?)\b/i`,
    'by hand: a list of words; letters repeat only behind a word’s beginning, blanks between two words',
  ],
  [
    String.raw`/\b(?:nobody|no\s+one|no\s+person|not|never|without)\b[^.;,]*/gi`,
    'by hand: it takes the clause to its end, and the next search begins there',
  ],
  [String.raw`/^(\d{2,5}) ?[x×] ?(\d{2,5}) ?@ ?(\d{1,3}(?:\.\d+)?) ?hz$/i`, 'recheck: linear'],
  [String.raw`/^(displayport .+?) ?[x×]([124])$/`, 'recheck: linear'],
  [String.raw`/\d+/g`, 'recheck: linear'],
  [String.raw`/^\s*socket\b/i`, 'recheck: linear'],
  [String.raw`/^Unexpected \S+ token/`, 'recheck: linear'],
  [String.raw`/^%YAML[ \t]+1\.1(?=\s|$)/`, 'recheck: safe by search'],
  [
    String.raw`/^[-+]?(?:0b[01_]+|0o[0-7_]+|0x[\da-f_]+|\.(?:inf|nan)|(?:\d[\d_,]*(?:\.[\d_]*)?|\.\d[\d_]` +
      String.raw`*)(?:e[-+]?\d+)?|\d[\d_]*(?::[0-5]?\d)+(?:\.[\d_]*)?)$/i`,
    'recheck: linear',
  ],
  [String.raw`/^([a-z][\w+.-]*:(?:\/\/[^/?#]*)?)([^?#]*)([^]*)$/i`, 'recheck: linear'],
  [String.raw`/^kind:[ \t]*([a-z]+)[ \t]*\r?$/m`, 'recheck: linear'],
  ['/(^|(?<!\n))\n+(?!\n|$)/g', 'recheck: safe by search'],
]);
