import { laterWords } from '../inUse.ts';

/** One thing that keeps a microphone from the page, what it looks like, and what to do. */
export interface HelpRow {
  readonly seen: string;
  readonly why: string;
  readonly toDo: string;
}

/** For the person who measures, in the order in which they are met. */
export function benchHelpRows(): readonly HelpRow[] {
  const { asking, refused, insecure, framed, missing, doubtful, hopeless } = laterWords.benchHelp;
  return [asking, refused, insecure, framed, missing, doubtful, hopeless];
}

/** For whoever looks after the school's computers. */
export function administratorHelpRows(): readonly HelpRow[] {
  const { site, platform, policies, windows, mac, chromebook, tablet, linux, network } =
    laterWords.administratorHelp;
  return [site, platform, policies, windows, mac, chromebook, tablet, linux, network];
}
