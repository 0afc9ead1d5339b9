import type { CaptureSurroundings } from './captureFailures.ts';
import { CAPTURE_PROCESSOR } from './worklet/captureMessages.ts';
import processorUrl from './worklet/captureProcessor.ts?worker&url';
import { keepScreenOn } from './wakeLock.ts';
import { watchPermission } from './watchPermission.ts';

/** What capture needs of the browser, in one place so that a test can break each part. */
export interface AudioSystem {
  surroundings(): CaptureSurroundings;
  /** undefined where the browser offers none. */
  mediaDevices(): MediaDevices | undefined;
  /** Without a sample rate, so that nothing is resampled. */
  createContext(): AudioContext;
  /** Loads the capture worklet into this context. */
  createCaptureNode(context: AudioContext): Promise<AudioWorkletNode>;
  isPageHidden(): boolean;
  /** Calls back when the permission for the microphone is taken back; what it returns ends that. */
  watchPermission(onDenied: () => void): () => void;
  keepScreenOn(): () => void;
  /** Milliseconds on a clock that never goes back. */
  nowMs(): number;
  /** Calls back every `intervalMs`; what it returns ends that. */
  every(intervalMs: number, callback: () => void): () => void;
}

/** Names that browsers have given the same query, newest first. */
interface PolicyDocument {
  readonly permissionsPolicy?: { allowsFeature(feature: string): boolean };
  readonly featurePolicy?: { allowsFeature(feature: string): boolean };
}

/** The page's real audio system. */
export const browserAudio: AudioSystem = {
  surroundings: () => {
    const policies = document as unknown as PolicyDocument;
    const policy = policies.permissionsPolicy ?? policies.featurePolicy;
    return {
      isSecureContext: window.isSecureContext,
      isFramed: window.self !== window.top,
      policyAllows: policy === undefined ? null : policy.allowsFeature('microphone'),
    };
  },
  mediaDevices: () => navigator.mediaDevices,
  createContext: () => new AudioContext({ latencyHint: 'interactive' }),
  createCaptureNode: async (context) => {
    await context.audioWorklet.addModule(processorUrl);
    return new AudioWorkletNode(context, CAPTURE_PROCESSOR, { numberOfInputs: 1, numberOfOutputs: 1 });
  },
  isPageHidden: () => document.visibilityState === 'hidden',
  watchPermission,
  keepScreenOn,
  nowMs: () => performance.now(),
  every: (intervalMs, callback) => {
    const timer = setInterval(callback, intervalMs);
    return () => clearInterval(timer);
  },
};
