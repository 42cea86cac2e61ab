// Validators of what an editor sends. Generated from `server/tools/generators/message-validators.ts` and package.json by `npm run generate`; do not edit.
interface Validator { (value: unknown): boolean; errors?: readonly { readonly instancePath: string; readonly message?: string }[] | null }
export declare const settings: Validator;
export declare const clientOptions: Validator;
export declare const explain: Validator;
export declare const foundPath: Validator;
export declare const readFile: Validator;
export declare const listedFolder: Validator;
