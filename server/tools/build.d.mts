// Types of build.mjs.
import type { BuildOptions } from 'esbuild';

export interface Bundle {
  readonly entry: string;
  readonly out: string;
  readonly more?: BuildOptions;
}

export const root: string;
export const bundles: readonly Bundle[];
export function optionsOf(bundle: Bundle): BuildOptions;
export function buildAll(): Promise<string[]>;
