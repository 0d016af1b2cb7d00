// What is set on the page, as a file that the commands read. The browser keeps it where the user says.

const TYPES = { csv: 'text/csv;charset=utf-8', yaml: 'application/yaml;charset=utf-8', svg: 'image/svg+xml', html: 'text/html;charset=utf-8' };

/** Hands a text to the browser as a file. */
export function hand(name, text) {
  const link = document.createElement('a');
  link.href = URL.createObjectURL(new Blob([text], { type: TYPES[name.split('.').pop()] }));
  link.download = name;
  link.click();
  setTimeout(() => URL.revokeObjectURL(link.href), 10_000);
}
