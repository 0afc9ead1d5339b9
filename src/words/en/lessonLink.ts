/** Why a lesson can’t be handed out as a link, and what to do. */
export const lessonFault = {
  taskTooLong: (length: number, longest: number) =>
    `The task has ${length} characters; ${longest} is the most that a lesson link holds. Shorten it.`,
  linkTooLong: (forks: number, longest: number) =>
    `${forks} forks are too many for one lesson: the link would be longer than the ${longest} characters allowed. Remove some forks, or shorten the task.`,
};
