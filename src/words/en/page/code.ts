/** Around a QR code. */
export const code = {
  picture: (name: string) => `QR code: ${name}`,
  pictureOfSeveral: (name: string, number: number, of: number) => `QR code ${number} of ${of}: ${name}`,
  place: (number: number, of: number) => `Code ${number} of ${of}: read them all, in any order`,
  before: '‹ Previous',
  next: 'Next ›',
};
