// A strict reader of the XML that we write: whatever is not well-formed is thrown back.

export interface Element {
  readonly name: string;
  readonly attributes: Readonly<Record<string, string>>;
  readonly children: readonly (Element | string)[];
}

const entities: Readonly<Record<string, string>> = { amp: '&', lt: '<', gt: '>', quot: '"', '#39': "'" };

function plain(text: string): string {
  if (/[<\u0000-\u0008\u000b\u000c\u000e-\u001f\ufffe\uffff]/.test(text))
    throw new Error(`not allowed in text: ${text}`);
  return text.replace(/&([^;&]*);?/g, (whole, name: string) => {
    if (!whole.endsWith(';') || !Object.hasOwn(entities, name)) throw new Error(`no entity: ${whole}`);
    return entities[name]!;
  });
}

function attributesOf(text: string): Record<string, string> {
  const found: Record<string, string> = {};
  const rest = text.replace(/\s([A-Za-z][\w:-]*)="([^"]*)"/g, (_, name: string, value: string) => {
    if (Object.hasOwn(found, name)) throw new Error(`twice: ${name}`);
    found[name] = plain(value);
    return '';
  });
  if (rest.trim() !== '') throw new Error(`no attributes: ${rest}`);
  return found;
}

/** The one element of a text. */
export function readXml(text: string): Element {
  const root: { children: (Element | string)[] } = { children: [] };
  const open: { name: string; children: (Element | string)[] }[] = [{ name: '', ...root }];
  let at = 0;
  for (const match of text.matchAll(/<(\/?)([A-Za-z][\w-]*)((?:\s[^<>]*?)?)(\/?)>/g)) {
    const [whole, end, name, attributes, empty] = match;
    const before = text.slice(at, match.index);
    if (before !== '') open.at(-1)!.children.push(plain(before));
    at = match.index + whole.length;
    if (end !== '') {
      if (open.pop()?.name !== name || attributes !== '') throw new Error(`closed: ${name}`);
      continue;
    }
    const element = { name: name!, attributes: attributesOf(attributes!), children: [] };
    open.at(-1)!.children.push(element);
    if (empty === '') open.push(element);
  }
  const [only, ...more] = open[0]!.children;
  if (open.length !== 1 || at !== text.length || more.length > 0 || typeof only !== 'object')
    throw new Error('not one whole element');
  return only;
}

/** Every element below one, itself included. */
export function elementsOf(one: Element): Element[] {
  return [one, ...one.children.flatMap((child) => (typeof child === 'string' ? [] : elementsOf(child)))];
}

/** All text below an element. */
export function textOf(one: Element): string {
  return one.children.map((child) => (typeof child === 'string' ? child : textOf(child))).join('');
}

/** Elements of a class. */
export function ofClass(one: Element, name: string): Element[] {
  return elementsOf(one).filter(({ attributes }) => attributes.class?.split(' ').includes(name));
}
