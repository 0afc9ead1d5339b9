import { css, html, nothing } from 'lit';
import { customElement, property, query, state } from 'lit/decorators.js';
import { live } from 'lit/directives/live.js';
import { repeat } from 'lit/directives/repeat.js';
import { RecordingSource } from '../../capture/recordingSource.ts';
import { markNumber } from '../../notebook/markList.ts';
import { soundBytes } from '../../notebook/keptSound.ts';
import type { KeptSound } from '../../notebook/keptSound.ts';
import { askStorage, storageFault } from '../../notebook/storageFault.ts';
import { fileStem } from '../../report/experimentJson.ts';
import { soundWav } from '../../report/soundWav.ts';
import type { Session } from '../../session/session.ts';
import { SOUND_LIMIT_BYTES } from '../../session/hearing/soundKeeping.ts';
import { laterWords } from '../../words/inUse.ts';
import { keptSoundWords } from '../../words/page/records.ts';
import { SessionWatch } from '../sessionWatch.ts';
import type { AskElement } from '../parts/askElement.ts';
import { saveFile } from '../saveFile.ts';
import { PartElement } from '../parts/partElement.ts';
import { sharedStyles } from '../sharedStyles.ts';
import '../parts/askElement.ts';
import { storageFaultWords } from '../../words/storageFaults.ts';

/** Sound kept on request: how much, out as WAV, heard again with the fork chosen now, deleted. */
@customElement('bench-sounds')
export class SoundsElement extends PartElement {
  static override styles = [
    sharedStyles,
    css`
      ul {
        list-style: none;
        display: grid;
        gap: var(--gap-2);
        max-block-size: 24rem;
        overflow-y: auto;
      }
      li {
        border-inline-start: 5px solid var(--line);
        padding-inline-start: var(--gap-3);
      }
      .choice {
        display: flex;
        gap: var(--gap-2);
        align-items: center;
        min-block-size: var(--target);
      }
      .choice input {
        flex: none;
      }
      .tools button {
        font-size: var(--text-small);
        padding-inline: var(--gap-2);
      }
    `,
  ];

  @property({ attribute: false }) session!: Session;
  @state() private sounds: readonly KeptSound[] = [];
  @state() private usedBytes = 0;
  @query('bench-ask') private asking!: AskElement;
  protected readonly watch = new SessionWatch(
    this,
    ['keeping', 'notebook', 'capture'],
    () => void this.load(),
  );

  override connectedCallback(): void {
    super.connectedCallback();
    void this.load();
  }

  private async load(): Promise<void> {
    this.requestUpdate();
    const all = await this.session.keeping.sounds?.listSounds().catch(() => []);
    const { id } = this.session.experiment;
    this.usedBytes = (all ?? []).reduce((sum, sound) => sum + soundBytes(sound), 0);
    this.sounds = (all ?? [])
      .filter((sound) => sound.experimentId === id)
      .sort((one, other) => (one.createdAt < other.createdAt ? -1 : 1));
  }

  private async onToggle(event: Event): Promise<void> {
    if ((event.target as HTMLInputElement).checked) await this.session.sound.turnOn();
    else this.session.sound.turnOff();
    // Where it can't be kept the box says so.
    this.requestUpdate();
  }

  private async wavOf(sound: KeptSound): Promise<Uint8Array<ArrayBuffer> | null> {
    const { sounds } = this.session.keeping;
    if (sounds === null) return null;
    const asked = await askStorage(() => sounds.loadSamples(sound));
    if ('value' in asked) return soundWav(this.session.experiment, sound, asked.value);
    this.session.tell('problem', laterWords.sounds.notRead(storageFaultWords(asked.fault)));
    return null;
  }

  private async onSave(sound: KeptSound, number: number): Promise<void> {
    const wav = await this.wavOf(sound);
    if (wav !== null) saveFile(`${fileStem(this.session.experiment)}-sound-${number}.wav`, 'audio/wav', wav);
  }

  private async onListen(sound: KeptSound): Promise<void> {
    const wav = await this.wavOf(sound);
    if (wav === null) return;
    const source = new RecordingSource(new Blob([wav], { type: 'audio/wav' }), {
      onProgress: (share) => this.session.hearing.setProgress(share),
      cues: sound.marks.map(({ markId, timeS }) => ({ markId, timeS, label: '' })),
    });
    await this.session.hearing.start(source);
  }

  private async onErase(sound: KeptSound, number: number): Promise<void> {
    const isWanted = await this.asking.ask(laterWords.sounds.askErase(number, lengthOf(sound)));
    if (!isWanted) return;
    try {
      await this.session.sound.idle();
      await this.session.keeping.sounds?.removeSound(sound.id);
      await this.session.sound.recount();
    } catch (error) {
      this.session.tell('problem', laterWords.sounds.notErased(storageFaultWords(storageFault(error))));
    }
    await this.load();
  }

  override render() {
    const { sound } = this.session;
    return html`<section class="stack" aria-label=${laterWords.sounds.heading}>
      <h2>${laterWords.sounds.heading}</h2>
      <label class="choice"
        ><input
          type="checkbox"
          .checked=${live(sound.isOn)}
          @change=${this.onToggle}
        />${laterWords.sounds.keep}</label
      >
      <p class="lead">${laterWords.sounds.lead(this.usedBytes, SOUND_LIMIT_BYTES)}</p>
      ${
        this.sounds.length === 0
          ? nothing
          : html`<ul>
                ${repeat(
                  this.sounds,
                  (kept) => kept.id,
                  (kept, index) => this.line(kept, index + 1),
                )}
              </ul>
              <p class="small">${laterWords.sounds.again}</p>`
      }
      <bench-ask></bench-ask>
    </section>`;
  }

  private line(sound: KeptSound, number: number) {
    const { experiment } = this.session;
    const found = sound.marks.map(({ markId }) => markNumber(experiment, markId));
    const numbers = [...new Set(found)].filter((one) => one > 0);
    const words = keptSoundWords({
      number,
      createdAt: sound.createdAt,
      lengthS: lengthOf(sound),
      forkHz: sound.forkHz,
      bytes: soundBytes(sound),
      marks: numbers,
    });
    return html`<li>
      <p>${words}</p>
      <div class="row tools">
        <button
          aria-label=${laterWords.sounds.saveNamed(number)}
          @click=${() => void this.onSave(sound, number)}
        >
          ${laterWords.sounds.save}
        </button>
        <button
          aria-label=${laterWords.sounds.listenNamed(number)}
          ?disabled=${this.session.hearing.isListening}
          @click=${() => void this.onListen(sound)}
        >
          ${laterWords.sounds.listen}
        </button>
        <button
          aria-label=${laterWords.sounds.eraseNamed(number)}
          @click=${() => void this.onErase(sound, number)}
        >
          ${laterWords.sounds.erase}
        </button>
      </div>
    </li>`;
  }
}

/** How long a kept sound lasts, s. */
function lengthOf({ frameCount, sampleRateHz }: KeptSound): number {
  return frameCount / sampleRateHz;
}

declare global {
  interface HTMLElementTagNameMap {
    'bench-sounds': SoundsElement;
  }
}
