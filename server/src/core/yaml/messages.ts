// What the YAML library reports, said in plain sentences.

/** One sentence on a syntax error: by its own text first, else by its code, else the library's words. */
export function plainMessage(code: string, message: string): string {
  const known = byText.find(([pattern]) => pattern.test(message));
  if (known) return known[1];
  return byCode.get(code) ?? `This cannot be read as YAML: ${withoutStop(message)}.`;
}

function withoutStop(message: string): string {
  let end = message.length;
  while (end > 0 && /[\s.]/.test(message.charAt(end - 1))) end--;
  return message.slice(0, end);
}

const byText: readonly (readonly [RegExp, string])[] = [
  [/^Implicit map keys need to be followed/, 'A colon is missing after this name; write it as `name: value`.'],
  [
    /^Implicit keys need to be on a single line|^Implicit keys of flow sequence/,
    'A name must stand on one line with its colon; check for a missing colon or quote above.',
  ],
  [
    /^Nested mappings are not allowed/,
    'A second `name: value` stands on the same line; put it on a line of its own, or quote the value if ' +
      'the colon is part of it.',
  ],
  [
    /^A block sequence may not be used as an implicit map key/,
    'A list stands here where a name should; indent the list under its own name.',
  ],
  [
    /^All mapping items must start/,
    'This line is indented differently from the lines it belongs with; start them all in the same column.',
  ],
  [
    /^All sequence items must start/,
    'This dash stands in a different column from the other dashes of its list; line them up.',
  ],
  [/^Sequence item without -/, 'This line stands among the items of a list; begin it with `- `.'],
  [
    /^Flow map in block collection|^Flow map must end/,
    'The braces are not closed; write the missing } and keep the lines inside indented.',
  ],
  [
    /^Flow sequence in block collection|^Flow sequence must end/,
    'The brackets are not closed; write the missing ] and keep the lines inside indented.',
  ],
  [/^Missing , between/, 'A comma is missing before this; separate what stands inside braces or brackets by commas.'],
  [/^Missing , or : between/, 'A comma or a colon is missing before this.'],
  [/^Missing space after :/, 'A space is missing after the colon; write `name: value`.'],
  [/^Unexpected (,|empty item) in/, 'There is a comma too many here; take it out.'],
  [
    /^Unexpected flow-(map|seq)-end token/,
    'This closing brace or bracket has no opening one before it; take it out, or quote the text.',
  ],
  [
    /^Unexpected block-seq-ind on same line/,
    'A list cannot begin on the line of its name; start it on the next line, indented.',
  ],
  [/^Missing closing "quote/, 'The closing " of this text is missing.'],
  [/^Missing closing 'quote/, "The closing ' of this text is missing."],
  [
    /^Block collections are not allowed within flow/,
    'Inside braces and brackets, write lists as [a, b] and maps as { a: b }.',
  ],
  [
    /^Block scalar header includes extra/,
    'Text stands on the line of the | or > sign; begin it on the next line, indented.',
  ],
  [/^Block scalar/, 'The lines of this text are not evenly indented; indent each of them under its name.'],
  [/^Comments must be separated/, 'A space is missing before the # of this comment.'],
  [/at node end$/, 'The value has ended before this; put what follows on a line of its own, or quote the whole value.'],
  [/^Unexpected \S+ token/, 'What stands here belongs to nothing before it; check the line above, or take it out.'],
  [/^Missing directives-end/, 'A line `---` is missing after the lines that begin with %.'],
  [/^Block collection cannot start on same line/, 'Begin the content on the line after `---`.'],
];

const byCode: ReadonlyMap<string, string> = new Map([
  ['TAB_AS_INDENT', 'A tab is used for indentation here; use spaces.'],
  ['BAD_DQ_ESCAPE', 'This escape after \\ means nothing in a double-quoted text; write \\\\ for a backslash.'],
  ['BAD_SCALAR_START', 'A value cannot begin with this sign; put the value in quotes.'],
  ['KEY_OVER_1024_CHARS', 'This name is longer than 1,024 characters; check for a missing line end.'],
  ['BAD_ALIAS', 'The name after & or * is missing or ends in a colon; give it a name and a space after it.'],
  ['ALIAS_PROPS', 'An alias (*name) can have no tag and no anchor of its own; take those out.'],
  ['MULTIPLE_ANCHORS', 'A value can have only one anchor (&name); take out the others.'],
  ['MULTIPLE_TAGS', 'A value can have only one tag (!name); take out the others.'],
  ['BAD_PROP_ORDER', 'An anchor or a tag stands before the sign it should follow; move it after.'],
  ['BAD_DIRECTIVE', 'This line beginning with % is not one that YAML 1.2 knows; take it out.'],
]);
