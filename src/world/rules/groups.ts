/** Puts things that were joined into one group, however long the chain between them. */
export class Groups {
  readonly #next = new Map<string, string>();

  /** The one that stands for the whole group of `name`. */
  headOf(name: string): string {
    let head = name;
    for (let next = this.#next.get(head); next !== undefined; next = this.#next.get(head)) head = next;
    // The way there is one step from now on.
    if (head !== name) this.#next.set(name, head);
    return head;
  }

  /** False when both were in one group already. */
  join(one: string, other: string): boolean {
    const [a, b] = [this.headOf(one), this.headOf(other)];
    if (a === b) return false;
    this.#next.set(a, b);
    return true;
  }
}
