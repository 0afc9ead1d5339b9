/** What text that was pasted is called beside the names of files. */
export const pastedName = 'Pasted text';
