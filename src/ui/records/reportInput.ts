import type { LabReportInput } from '../../report/labReport/labReportInput.ts';
import { compareGroups } from '../../session/experiment/comparedGroups.ts';
import type { Session } from '../../session/session.ts';

/** What the open experiment's report is made of; null while some of it is still being worked out. */
export function reportInput(session: Session): LabReportInput | null {
  const { experiment, outcome, isWorkingOut } = session;
  const { value, isPending } = session.answers.ask(
    { kind: 'compare', about: experiment, ask: { by: 'place', oneId: null, from: 0 } },
    compareGroups,
  );
  if (isWorkingOut || isPending || value === null) return null;
  const { groupIds, pairs } = value;
  return {
    experiment,
    places: outcome.places,
    comparisons: pairs.flatMap((pair) => (pair.differenceMps === null ? [] : [pair])),
    pairsLeftOut: (groupIds.length * (groupIds.length - 1)) / 2 - pairs.length,
  };
}
