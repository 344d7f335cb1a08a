/** Pages that are not there or went wrong. Apart from the rest: every page of the product carries these few. */
export const words = {
  'lost.title': 'There is no page here',
  'lost.text': 'The address may be old or mistyped.',
  'lost.home': 'Go to the start',
  'broken.title': 'Something went wrong',
  'broken.text': 'What you entered before is kept. Try again. If it keeps happening, ring your clinic.',
  'broken.again': 'Try again',
} as const;
