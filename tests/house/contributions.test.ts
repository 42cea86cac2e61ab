// What the extension’s manifest contributes leads somewhere: files that are there, commands that something registers.
import { existsSync, readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';

const client = join(__dirname, '../../client');
const read = (file: string): string => readFileSync(join(client, file), 'utf8');

interface Step {
  readonly id: string;
  readonly media: Readonly<Record<string, string>>;
  readonly completionEvents: readonly string[];
}
interface Contributes {
  readonly commands: readonly { readonly command: string; readonly icon?: string }[];
  readonly menus: Readonly<Record<string, readonly { readonly command: string }[]>>;
  readonly languages: readonly { readonly configuration?: string; readonly icon?: Readonly<Record<string, string>> }[];
  readonly grammars: readonly { readonly path: string; readonly scopeName: string }[];
  readonly snippets: readonly { readonly language: string; readonly path: string }[];
  readonly configurationDefaults: Readonly<Record<string, Readonly<Record<string, unknown>>>>;
  readonly yamlValidation: readonly { readonly url: string }[];
  readonly walkthroughs: readonly { readonly steps: readonly Step[] }[];
}

const manifest = JSON.parse(read('package.json')) as { readonly contributes: Contributes; readonly icon: string };
const { commands, menus, languages, grammars, snippets, yamlValidation, walkthroughs, configurationDefaults } =
  manifest.contributes;
const steps = walkthroughs.flatMap((one) => one.steps);
const sources = readdirSync(join(client, 'src'), { recursive: true, encoding: 'utf8' })
  .filter((name) => name.endsWith('.ts'))
  .map((name) => read(join('src', name)))
  .join('\n');
const declared = commands.map(({ command }) => command);

describe('commands', () => {
  it('are registered, each of them', () => {
    const registered = [...sources.matchAll(/registerCommand\(\s*'([\w.]+)'/g)].map((match) => match[1]);
    expect(declared.filter((command) => !registered.includes(command))).toEqual([]);
  });

  it('of menus, of the walkthrough and of its words are declared, or the editor’s own', () => {
    const linked = ['package.nls.json', 'package.nls.de.json'].flatMap((file) =>
      [...read(file).matchAll(/command:([\w.]+)/g)].map((match) => match[1]!),
    );
    const events = steps.flatMap(({ completionEvents }) =>
      completionEvents.flatMap((one) => /^onCommand:(.*)/.exec(one)?.[1] ?? []),
    );
    const named = [
      ...Object.values(menus).flatMap((items) => items.map(({ command }) => command)),
      ...linked,
      ...events,
    ];
    expect(named.length).toBeGreaterThan(8);
    expect(named.filter((one) => !one.startsWith('workbench.') && !declared.includes(one))).toEqual([]);
    expect((menus['file/newFile'] ?? []).map(({ command }) => command)).toEqual([
      'fettle.newBuild',
      'fettle.newPart',
      'fettle.newPartFromSheet',
    ]);
  });
});

it('a step of the walkthrough ends by what something tells', () => {
  expect(steps).toHaveLength(4);
  for (const { completionEvents } of steps) {
    expect(completionEvents).not.toEqual([]);
    for (const event of completionEvents)
      expect(sources, event).toContain(`'${event.replace(/^on(?:Context|Command):/, '')}'`);
  }
});

it('icons and pictures are drawings or signs of the editor', () => {
  const icons = [
    ...languages.flatMap(({ icon = {} }) => Object.values(icon)),
    ...steps.flatMap(({ media }) =>
      Object.entries(media).flatMap(([kind, path]) => (kind === 'altText' ? [] : [path])),
    ),
  ];
  expect(icons.length).toBeGreaterThan(8);
  for (const path of icons) {
    expect(read(path).trim(), path).toMatch(/^(?:<\?xml[^>]*>\s*)?<svg\s[\s\S]*<\/svg>$/);
    expect(read(path), path).not.toMatch(/<script|href="https?:|\son\w+=/i);
  }
  for (const { icon } of commands) if (icon !== undefined) expect(icon).toMatch(/^\$\([a-z-]+\)$/);
  expect(existsSync(join(client, manifest.icon))).toBe(true);
});

it('grammars, snippets and configurations are there and can be read', () => {
  for (const { path, scopeName } of grammars) expect(JSON.parse(read(path))).toMatchObject({ scopeName });
  for (const { path } of snippets) expect(Object.keys(JSON.parse(read(path)) as object), path).not.toEqual([]);
  for (const { configuration } of languages) expect(existsSync(join(client, configuration ?? 'none'))).toBe(true);
});

it('schemas for other tools are those of the project', () => {
  for (const { url } of yamlValidation) expect(existsSync(join(client, '..', url)), url).toBe(true);
});

// The editor knows no places: it would list whole pieces of a build among the names of boards.
it('snippets stay out of lists of what may stand at a place', () => {
  expect(snippets.length).toBeGreaterThan(0);
  for (const { language } of snippets)
    expect(configurationDefaults[`[${language}]`]).toMatchObject({ 'editor.suggest.showSnippets': false });
});
