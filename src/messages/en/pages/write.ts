/** Writing to the clinic. */
export const words = {
  'write.lead': 'Ask a question, or tell us something. It is not for urgent things.',
  'write.when': 'We read messages when we are here: {hours}',
  'write.urgent': 'Is it urgent? Ring {phone}. In danger, call {emergency}.',
  'write.label': 'Your message',
  'write.send': 'Send',
  'write.empty': 'Write your message first.',
  'write.sent': 'Sent. Someone at your clinic will read it.',
  'write.not-sent': 'It was not sent. Try once more, or ring your clinic.',
  'write.mine': 'What you wrote',
} as const;
