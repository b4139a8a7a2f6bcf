// The focus given back to the sheet once a question or a wait about it is over: keys go on there.

export function toBoard(): void {
  document.querySelector<HTMLElement>(".board")?.focus();
}
