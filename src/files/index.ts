export { buildFileName, buildFileText, type Opened, openBuildFile, type Refused } from "./build-file";
