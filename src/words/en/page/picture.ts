/** A picture that can be saved. */
export const picture = {
  region: (title: string) => `Picture: ${title}`,
  alternative: (title: string, words: string) => `${title}. ${words}`,
  saveSvg: 'Save as SVG',
  saveSvgNamed: (title: string) => `Save “${title}” as SVG`,
  savePng: 'Save as PNG',
  savePngNamed: (title: string) => `Save “${title}” as PNG`,
};
