/** Writing to the clinic. */
export const words = {
  'write.lead': 'Ask a question, or tell us something. It is not for urgent things.',
  'write.when': 'We read messages when we are here: {hours}',
  'write.urgent': 'Is it urgent? Ring {phone}. In danger, call {emergency}.',
  'write.label': 'Your message',
  'write.hint': 'Kept on this phone as you type.',
  'write.send': 'Send',
  'write.empty': 'Write your message first.',
  'write.sent': 'Sent. Someone at your clinic will read it.',
  'write.kept': 'Kept on this phone. It goes to your clinic as soon as there is a signal.',
  'write.kept-signed-out': 'Kept on this phone. Sign in again to send it.',
  'write.not-kept': 'This phone has no room to keep it. Leave this page open, or ring your clinic.',
  'write.waits': {
    by: 'count',
    one: '1 message on this phone has not been sent yet.',
    other: '{count} messages on this phone have not been sent yet.',
  },
  'write.conversation': 'What you and your clinic wrote',
  'write.none-yet': 'Nothing yet.',
  'write.from-me': 'You, {date}',
  'write.from-clinic': '{name}, {date}',
} as const;
