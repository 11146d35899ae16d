export { buildFileName, buildFileText, openBuildFile } from "./build-file";
