// The kinds of file that the extension knows, as the editor names them.

/** The language of guides: not ours, and other texts in it are none of our business. */
export const guideLanguage = 'markdown';

export const buildLanguage = 'fettle-build';

/** All of ours. */
export const languageIds: readonly string[] = [buildLanguage, 'fettle-part', 'fettle-settings'];
