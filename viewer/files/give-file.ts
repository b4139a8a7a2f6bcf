// Hands bytes to the browser as a download under a name.

export const giveFile = (name: string, bytes: Uint8Array): void => {
  const address = URL.createObjectURL(new Blob([new Uint8Array(bytes)]));
  const link = document.createElement("a");
  link.href = address;
  link.download = name;
  link.click();
  // The browser reads it after this turn.
  setTimeout(() => URL.revokeObjectURL(address), KEPT_MS);
};

const KEPT_MS = 60_000;
