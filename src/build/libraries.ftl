<#list dependencyMap as entry>
${entry.getKey().getName()!entry.getKey().getArtifactId()}	${entry.getKey().getVersion()}	${entry.getValue()?join(", ")}
</#list>
