export const microphone = {
  name: 'Microphone help',
  heading: 'Help with the microphone',
  lead: 'Only listening needs a microphone. Lengths can be typed, recordings opened and the practice column used without one.',
  bench: 'At the bench',
  benchHeads: { seen: 'What you see', why: 'Why', toDo: 'What to do' },
  administratorHeading: 'For the school’s administrator',
  administratorLead:
    'This page needs the microphone without any processing for voices. It stores experiments in the browser and sends nothing.',
  administrator: 'Administrator',
  administratorHeads: { seen: 'Where', why: 'What matters', toDo: 'Setting' },
  print: 'Print this page',
  back: 'Back to the checks',
};
