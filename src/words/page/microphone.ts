/** One thing that keeps a microphone from the page, what it looks like, and what to do. */
export interface HelpRow {
  readonly seen: string;
  readonly why: string;
  readonly toDo: string;
}

/** For the person at the bench, in the order in which they are met. */
export const BENCH_HELP: readonly HelpRow[] = [
  {
    seen: 'Nothing happens after Listen',
    why: 'The browser’s question is still open, often small and near the address.',
    toDo: 'Choose Allow. If it was closed, press Listen again.',
  },
  {
    seen: 'The microphone was refused',
    why: 'Somebody once chose Block for this page; the browser keeps that.',
    toDo: 'Press the icon beside the address, set the microphone to Allow, press Listen again.',
  },
  {
    seen: 'A secure address is asked for',
    why: 'Over plain http, and from a file on the disk, browsers give no microphone.',
    toDo: 'Open the page by its https address, or on this computer at localhost.',
  },
  {
    seen: 'The page stands inside another one',
    why: 'A learning platform shows it in a frame without handing the microphone on.',
    toDo: 'Open it in a tab of its own.',
  },
  {
    seen: 'No microphone was found, or it is in use',
    why: 'It is unplugged, switched off by a key or a slider, or a call holds it.',
    toDo: 'Plug it in, look for the switch, end the call, press Listen again.',
  },
  {
    seen: 'The level is in doubt: something may change it',
    why: 'A voice mode of the browser, the system or a headset rides on the gain.',
    toDo: 'Take the headset off, choose the built-in microphone, switch the voice mode off, or try another browser.',
  },
  {
    seen: 'Nothing helps',
    why: 'Some systems give pages only processed sound.',
    toDo: 'Record a slide with any recorder whose voice mode is off, and open the file here: it goes through the same analysis.',
  },
];

/**
 * For whoever looks after the school's computers. Permissions-Policy and `allow`: W3C Permissions Policy; the two
 * capture policies: the browsers' published lists of enterprise policies; places of the systems' switches: from memory.
 */
export const ADMINISTRATOR_HELP: readonly HelpRow[] = [
  {
    seen: 'Site, if you host these files',
    why: 'Served over https; a Permissions-Policy header must not shut the microphone out.',
    toDo: 'Permissions-Policy: microphone=(self)',
  },
  {
    seen: 'Learning platform',
    why: 'A frame hands the microphone on only where it says so.',
    toDo: '<iframe allow="microphone" …>, or a link that opens a tab of its own',
  },
  {
    seen: 'Managed Chrome, Edge, ChromeOS',
    why: 'Policies allow or forbid capture; sites can be let through one by one.',
    toDo: 'AudioCaptureAllowedUrls: the address of this page. It counts even where AudioCaptureAllowed is off',
  },
  {
    seen: 'Windows',
    why: 'The privacy switch for desktop programs; “enhancements” of the driver ride on the gain.',
    toDo: 'Settings, Privacy, Microphone: on for the browser. Settings, Sound, the microphone’s properties: enhancements off',
  },
  {
    seen: 'macOS',
    why: 'Each program asks once; voice isolation is a mode of the microphone.',
    toDo: 'System Settings, Privacy & Security, Microphone: on for the browser. Microphone mode in the menu bar: Standard',
  },
  {
    seen: 'ChromeOS',
    why: 'A switch for the whole device, and one for noise cancelling beside the input’s volume.',
    toDo: 'Microphone access on; noise cancelling and style transfer off',
  },
  {
    seen: 'iPad and iPhone',
    why: 'The browser’s own switch; the microphone mode belongs to each program.',
    toDo: 'Settings of the browser: microphone Allow. Control centre while listening: microphone mode Standard',
  },
  {
    seen: 'Linux',
    why: 'The sound server may run an echo-cancelling module.',
    toDo: 'Choose the plain input in the sound settings',
  },
  {
    seen: 'Network',
    why: 'The page sends nothing: sound is worked through on the device and never leaves it.',
    toDo: 'No port, no server, no exception is needed beyond loading the page',
  },
];
