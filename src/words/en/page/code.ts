/** Around a QR code. */
export const code = {
  picture: (name: string, number: number, of: number) =>
    `QR code: ${name}${of > 1 ? `, ${number} of ${of}` : ''}`,
  place: (number: number, of: number) => `Code ${number} of ${of}: read them all, in any order`,
  before: '‹ Previous',
  next: 'Next ›',
};
