/** Why a lesson can’t be handed out as a link, and what to do. */
export const lessonFault = {
  taskTooLong: (length: number, longest: number) =>
    `The task has ${length} characters; ${longest} is the most that a lesson link holds. Shorten it.`,
  linkTooLong: (forks: number, longest: number) =>
    `With ${forks} forks the link would be longer than the allowed ${longest} characters. Remove some forks, or shorten the task.`,
};
