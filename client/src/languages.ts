// The kinds of file that the extension knows, as the editor names them.

export const languageIds: readonly string[] = ['fettle-build', 'fettle-part', 'fettle-settings'];
