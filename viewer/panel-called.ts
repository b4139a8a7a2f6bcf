// What a panel is called in every room: by its title; and where the key of the text must be known, as where a drag writes by it, with
// its name beside. One without a title of its own has its name for one.

/** With its name, where that is not the title. */
export const calledByKey = ({
  name,
  title,
}: {
  readonly name: string;
  readonly title: string;
}): string => (title === name ? name : `${title} (${name})`);
