/** Setting up a phone, and its PIN. */
export const words = {
  'join.title': 'Set up this phone',
  'join.code': 'Code from your clinic',
  'join.code-hint': 'Ten letters and digits, such as 4KQ7M-X2D9T. It works once.',
  'join.no-code': 'Enter the code on the paper from your clinic.',
  'join.go': 'Go on',
  'join.pin-title': 'Choose a PIN',
  'join.pin-why': 'You need it each time you open this page on this phone. It works on no other phone.',
  'join.pin': 'New PIN',
  'join.pin-hint': 'Six digits. Not a row such as 123456.',
  'join.again': 'The same PIN once more',
  'join.pin-shape': 'Enter six digits.',
  'join.pin-differs': 'The two PINs differ. Enter the same one twice.',
  'join.done': 'Keep this PIN',
  'invite.how':
    'Open your phone’s camera, point it at the picture and open the page it shows. Or open {address} and type this code:',
  'invite.once':
    'It works once, until {date}. Then you choose a PIN. Keep this paper to yourself until you have used it.',
  'pin.title': 'Enter your PIN',
  'pin.label': 'PIN of this phone',
  'pin.hint': 'Six digits',
  'pin.go': 'Open',
  'pin.forgotten': 'PIN forgotten? Ring your clinic. It can give you a new code for this phone.',
  'pin.spent': 'This phone needs a new code',
  'pin.spent-text': 'The PIN was wrong five times. Ring your clinic and ask for a new code.',
  'pin.new-code': 'I have a new code',
  'pin.passphrase': 'Sign in with a passphrase',
} as const;
