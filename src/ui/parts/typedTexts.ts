import type { Step } from '../../notebook/step.ts';
import type { ReactiveController } from 'lit';
import type { Experiment } from '../../notebook/experiment.ts';
import type { Session } from '../../session/session.ts';
import { SessionWatch } from '../sessionWatch.ts';
import type { PartElement } from './partElement.ts';

/** A text of the experiment that is typed into a field. */
export interface TypedText {
  /** One name a field, over all visits. */
  readonly field: string;
  /** Names the step for the undo button. */
  readonly step: Step;
  /** Undefined where the experiment has no such text any more. */
  readonly read: (experiment: Experiment) => string | undefined;
  readonly write: (experiment: Experiment, text: string) => Experiment;
}

/** How long after the last key a text is taken, ms: a word, and well below the second that may be lost. */
const PAUSE_MS = 400;

/**
 * Takes texts while they are typed, without waiting until the field is left, one undo step a stay in the field. Until
 * a text is in the store it also lies among the drafts: what a reload cuts off comes back when its field does.
 */
export class TypedTexts implements ReactiveController {
  private readonly waiting = new Map<string, () => void>();
  private timer = 0;

  private broughtId: string | null = null;

  /** @param texts  of the experiment, as many as there are now */
  constructor(
    private readonly host: PartElement & { session: Session },
    private readonly texts: (experiment: Experiment) => readonly TypedText[],
  ) {
    host.addController(this);
    new SessionWatch(host, ['notebook'], () => this.follow());
  }

  hostConnected(): void {
    this.broughtId = null;
    this.follow();
    addEventListener('pagehide', this.takeAll);
    document.addEventListener('visibilitychange', this.takeAll);
  }

  hostDisconnected(): void {
    removeEventListener('pagehide', this.takeAll);
    document.removeEventListener('visibilitychange', this.takeAll);
    this.takeAll();
    this.host.session.endTyping();
  }

  /** A key was pressed in the field. */
  onInput(event: Event, text: TypedText): void {
    const field = event.target as HTMLInputElement | HTMLTextAreaElement;
    const { session } = this.host;
    const { id } = session.experiment;
    session.drafts.set(id, text.field, field.value);
    this.waiting.set(text.field, () => {
      if (session.experiment.id === id) this.take(text, field.value);
      // Refused, as where another tab has the experiment: the field shows what holds.
      const now = session.experiment.id === id ? text.read(session.experiment) : undefined;
      if (now !== undefined && field.value !== now) field.value = now;
    });
    clearTimeout(this.timer);
    this.timer = window.setTimeout(this.takeAll, PAUSE_MS);
  }

  /** The field was left: what is typed next is another step. */
  onLeave(event: Event, text: TypedText): void {
    // A file that is dropped, or a tool that fills forms, may change a field without a key.
    this.onInput(event, text);
    this.takeAll();
    this.host.session.endTyping();
  }

  /** Another experiment is open: what was typed for it before the page went is taken. */
  private follow(): void {
    const { id } = this.host.session.experiment;
    if (id === this.broughtId) return;
    this.broughtId = id;
    void this.bringBack(id);
  }

  private async bringBack(id: string): Promise<void> {
    const { session } = this.host;
    // A tab that only shows the experiment leaves what another one is typing alone.
    await session.keeping.settled();
    for (const text of this.texts(session.experiment)) {
      const draft = session.drafts.get(id, text.field);
      if (draft === null || session.experiment.id !== id || session.keeping.access !== 'own') continue;
      this.take(text, draft);
      session.endTyping();
    }
  }

  private take(text: TypedText, typed: string): void {
    const { session } = this.host;
    const { id } = session.experiment;
    const now = text.read(session.experiment);
    if (now !== undefined && now !== typed) {
      session.changeTyped(text.step, text.field, (experiment) => text.write(experiment, typed));
    }
    void this.forgetSaved(id, text.field, typed);
  }

  /** A draft is done with when what became of it is in the store; newer ones aren't touched. */
  private async forgetSaved(id: string, field: string, typed: string): Promise<void> {
    const { session } = this.host;
    await session.keeping.idle();
    const isOver = session.saveState.kind === 'saved' || session.keeping.access === 'elsewhere';
    if (isOver && session.drafts.get(id, field) === typed) session.drafts.set(id, field, null);
  }

  private readonly takeAll = (): void => {
    clearTimeout(this.timer);
    const takes = [...this.waiting.values()];
    this.waiting.clear();
    for (const take of takes) take();
  };
}
