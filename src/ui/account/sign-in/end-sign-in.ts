/** Asks the server to end the sign-in of this browser; rejects where nobody answered. */
export const endSignIn = (): Promise<Response> =>
  fetch('/api/auth/sign-out', {
    method: 'POST',
    headers: { 'content-type': 'application/json' },
    body: '{}',
  });
