/** A group that came by a code and gave itself no name. */
export const namelessGroup = 'Group without a name';
