/** Asks a lesson's group for its name. */
export const groupName = {
  ask: 'Your group’s name',
  take: 'Use it',
  later: 'Later',
  taken: (group: string) =>
    `Files, report and class call you “${group}” now. It can be changed under Records.`,
};
