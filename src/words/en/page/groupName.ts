/** Asks a lesson's group for its name. */
export const groupName = {
  ask: 'Your group’s name',
  take: 'Use it',
  later: 'Later',
  taken: (group: string) =>
    `Your files, report and class now call you “${group}”. You can change the name under Records.`,
};
