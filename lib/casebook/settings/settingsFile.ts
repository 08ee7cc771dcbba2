/** The name of the settings file in the content folder. */
export const settingsFile = "shop.yaml";
