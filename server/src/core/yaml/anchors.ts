// Anchors and what aliases stand for, within a budget, so that no file can grow without end.
import { quoted } from '../text/escape';
import type { Span } from '../text/span';
import { withCommas, limits } from './limits';
import { children } from './nodes';
import type { Node, Problem } from './nodes';

/** The anchors seen so far in one document. */
export class Anchors {
  // An anchor whose node is still being read has no node yet: an alias inside it would never end.
  private readonly known = new Map<string, Node | undefined>();
  private aliases = 0;
  private budget: number = limits.nodes;
  private reported = false;

  constructor(private readonly problems: Problem[]) {}

  open(name: string): void {
    this.known.set(name, undefined);
  }

  close(name: string, node: Node): void {
    this.known.set(name, node);
  }

  /** What the alias stands for, or undefined with the reason added to the problems. */
  resolve(name: string, span: Span, depth: number): Node | undefined {
    const node = this.known.get(name);
    if (!node) {
      const why = this.known.has(name)
        ? 'stands inside the value it stands for'
        : 'stands for nothing: no anchor of that name comes before it';
      this.problems.push({
        code: 'alias-unknown',
        message: `The alias ${quoted(name)} ${why}; write the value out.`,
        span,
      });
      return undefined;
    }
    this.aliases++;
    if (this.aliases <= limits.aliases && this.spend(node, depth)) return node;
    this.reportLimit(span);
    return undefined;
  }

  /** Counts every node below, as often as it is repeated; false once too many or too deep. */
  private spend(node: Node, depth: number): boolean {
    const open = [{ node, depth }];
    for (let next = open.pop(); next; next = open.pop()) {
      if (--this.budget < 0 || next.depth > limits.depth) return false;
      for (const child of children(next.node)) open.push({ node: child, depth: next.depth + 1 });
    }
    return true;
  }

  private reportLimit(span: Span): void {
    if (this.reported) return;
    this.reported = true;
    const message =
      `Aliases are used more than ${limits.aliases} times, or repeat more than ${withCommas(limits.nodes)} ` +
      `values or ${limits.depth} levels; from here on Fettle leaves them empty, so write the values out.`;
    this.problems.push({ code: 'limits-reached', message, span });
  }
}
