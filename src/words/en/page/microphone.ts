export const microphone = {
  name: 'Microphone help',
  heading: 'Help with the microphone',
  lead: 'You need a microphone only to listen. Without one you can type lengths, open recordings and use the practice column.',
  bench: 'While you measure',
  benchHeads: { seen: 'What you see', why: 'Why', toDo: 'What to do' },
  administratorHeading: 'For the school’s administrator',
  administratorLead:
    'This page needs the microphone without any voice processing. It saves experiments in the browser and sends nothing.',
  administrator: 'Administrator',
  administratorHeads: { seen: 'Where', why: 'What matters', toDo: 'Setting' },
  print: 'Print this page',
  back: 'Back to the checks',
};

/** What keeps a microphone from the page, what it looks like, and what to do, in the order in which they are met. */
export const benchHelp = {
  asking: {
    seen: 'Nothing happens after Listen',
    why: 'The browser is still asking for permission, often in a small box near the address.',
    toDo: 'Choose Allow. If you closed the box, press Listen again.',
  },
  refused: {
    seen: 'The microphone was refused',
    why: 'Somebody once chose Block for this page, and the browser remembers that.',
    toDo: 'Press the icon beside the address, set the microphone to Allow, then press Listen again.',
  },
  insecure: {
    seen: 'The page asks for a secure address',
    why: 'Browsers allow no microphone over plain http or from a file on the disk.',
    toDo: 'Open the page by its https address, or at localhost on this computer.',
  },
  framed: {
    seen: 'The page is embedded in another page',
    why: 'A learning platform shows it in a frame that doesn’t pass the microphone on.',
    toDo: 'Open it in a tab of its own.',
  },
  missing: {
    seen: 'No microphone was found, or it is in use',
    why: 'It is unplugged or switched off, or another program (such as a call) is using it.',
    toDo: 'Plug it in, look for its switch, end the call, then press Listen again.',
  },
  doubtful: {
    seen: 'The level is in doubt: something may change it',
    why: 'A voice mode of the browser, the system or a headset changes the volume by itself.',
    toDo: 'Take the headset off, choose the built-in microphone, switch the voice mode off, or try another browser.',
  },
  hopeless: {
    seen: 'Nothing helps',
    why: 'Some systems give pages only processed sound.',
    toDo: 'Record a slide with any recorder whose voice mode is off, and open the file here. It is analysed in the same way.',
  },
};

/**
 * For whoever looks after the school's computers. Permissions-Policy and `allow`: W3C Permissions Policy; the two
 * capture policies: the browsers' published lists of enterprise policies; places of the systems' switches: from memory.
 */
export const administratorHelp = {
  site: {
    seen: 'Site, if you host these files',
    why: 'It must be served over https, and a Permissions-Policy header must not block the microphone.',
    toDo: 'Permissions-Policy: microphone=(self)',
  },
  platform: {
    seen: 'Learning platform',
    why: 'A frame passes the microphone on only where it says so.',
    toDo: '<iframe allow="microphone" …>, or a link that opens a tab of its own',
  },
  policies: {
    seen: 'Managed Chrome, Edge, ChromeOS',
    why: 'Policies allow or forbid the microphone; single sites can be allowed.',
    toDo: 'AudioCaptureAllowedUrls: the address of this page. It counts even where AudioCaptureAllowed is off',
  },
  windows: {
    seen: 'Windows',
    why: 'The privacy switch for desktop programs; the driver’s “enhancements” change the volume by themselves.',
    toDo: 'Settings, Privacy, Microphone: on for the browser. Settings, Sound, the microphone’s properties: enhancements off',
  },
  mac: {
    seen: 'macOS',
    why: 'Each program asks once; voice isolation is a mode of the microphone.',
    toDo: 'System Settings, Privacy & Security, Microphone: on for the browser. Microphone mode in the menu bar: Standard',
  },
  chromebook: {
    seen: 'ChromeOS',
    why: 'One switch for the whole device, and one for noise cancelling beside the input volume.',
    toDo: 'Microphone access on; noise cancelling and style transfer off',
  },
  tablet: {
    seen: 'iPad and iPhone',
    why: 'The browser has its own switch; each program has its own microphone mode.',
    toDo: 'Settings of the browser: microphone Allow. Control centre while listening: microphone mode Standard',
  },
  linux: {
    seen: 'Linux',
    why: 'The sound server may run an echo-cancelling module.',
    toDo: 'Choose the plain input in the sound settings',
  },
  network: {
    seen: 'Network',
    why: 'The page sends nothing: sound is analysed on the device and never leaves it.',
    toDo: 'No port, server or exception is needed, except to load the page',
  },
};
