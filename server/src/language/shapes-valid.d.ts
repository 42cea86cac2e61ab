// Validators of what an editor sends. Generated from `server/tools/generators/message-validators.ts` and client/package.json by `npm run generate`; do not edit.
interface Validator { (value: unknown): boolean; errors?: readonly { readonly instancePath: string; readonly message?: string }[] | null }
export declare const settings: Validator;
export declare const clientOptions: Validator;
export declare const foundPath: Validator;
export declare const readFile: Validator;
export declare const listedFolder: Validator;
export declare const initialize: Validator;
export declare const textDocumentDidOpen: Validator;
export declare const textDocumentDidChange: Validator;
export declare const textDocumentDidClose: Validator;
export declare const textDocumentDidSave: Validator;
export declare const workspaceDidChangeWatchedFiles: Validator;
export declare const workspaceDidChangeConfiguration: Validator;
export declare const workspaceDidChangeWorkspaceFolders: Validator;
export declare const CancelRequest: Validator;
export declare const SetTrace: Validator;
export declare const windowWorkDoneProgressCancel: Validator;
export declare const textDocumentHover: Validator;
export declare const textDocumentDefinition: Validator;
export declare const textDocumentReferences: Validator;
export declare const textDocumentDocumentHighlight: Validator;
export declare const textDocumentPrepareRename: Validator;
export declare const textDocumentRename: Validator;
export declare const workspaceWillRenameFiles: Validator;
export declare const workspaceDidRenameFiles: Validator;
export declare const textDocumentCompletion: Validator;
export declare const textDocumentDocumentSymbol: Validator;
export declare const textDocumentCodeAction: Validator;
export declare const textDocumentDiagnostic: Validator;
export declare const workspaceDiagnostic: Validator;
export declare const workspaceExecuteCommand: Validator;
export declare const fettleExplain: Validator;
/** Validators of the protocol’s parameters by method. */
export declare const byMethod: Readonly<Record<string, Validator | undefined>>;
