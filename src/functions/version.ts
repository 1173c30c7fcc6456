/** Version of the add-in, equal to that of package.json and of the manifest. */
export const PROJECT_VERSION = "0.1.0";
