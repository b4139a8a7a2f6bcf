// The browser's choice of a folder to work in (WICG File System Access), by itself: what works in one is loaded when one is chosen.

type PickFolder = (options: { readonly mode: "readwrite" }) => Promise<FileSystemDirectoryHandle>;

/** null where the browser has no such thing. */
export const pickFolder = (): PickFolder | null => {
  const pick: unknown = Reflect.get(window, "showDirectoryPicker");
  return typeof pick === "function" ? (options) => pick.call(window, options) : null;
};
