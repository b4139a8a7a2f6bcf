// What a panel is called in every room: by its title; and where the key of the text must be known, as where a drag writes by it, with
// its name beside. One without a title of its own has its name for one.

interface Called {
  readonly name: string;
  readonly title: string;
}

/** With its name, where that is not the title. */
export const calledByKey = ({ name, title }: Called): string =>
  title === name ? name : `${title} (${name})`;

/** By its title, where no other of these has the same: a file may stand in a console more than once. */
export const calledAmong = (panel: Called, panels: readonly Called[]): string =>
  panels.some(({ name, title }) => name !== panel.name && title === panel.title)
    ? calledByKey(panel)
    : panel.title;
