/** A file on disk the browser lets us read and write again. */
export class FakeFile {
  readonly name: string;
  text = "";
  private changes = 0;

  constructor(name: string) {
    this.name = name;
  }

  getFile(): Promise<File> {
    return Promise.resolve(new File([this.text], this.name, { lastModified: this.changes }));
  }

  async write(blob: Blob): Promise<this> {
    this.changeOutside(await blob.text());
    return this;
  }

  changeOutside(text: string): void {
    this.text = text;
    this.changes += 1;
  }
}
