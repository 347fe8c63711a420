/** A file that is fetched once for the page, and what is made of it. When that fails, the next who asks tries again. */
export function fetchedOnce<Data, Made>(make: (data: Data) => Made): (address: URL | string) => Promise<Made> {
  let waiting: Promise<Made> | undefined;
  return (address) => {
    waiting ??= fetch(address)
      .then((answer) => {
        if (!answer.ok) throw new Error(`${address}: ${answer.status}`);
        return answer.json() as Promise<Data>;
      })
      .then(make);
    waiting.catch(() => {
      waiting = undefined;
    });
    return waiting;
  };
}
